using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Course;
using Practice.Domain.Debriefs;
using Practice.Domain.Foods.Own;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Store.Accounts;
using Practice.Store.Clients;
using Practice.Store.Mail;
using Practice.Store.Portal;
using Practice.Store.Practices;
using Practice.Store.Sealing;

namespace Practice.Store;

/// <summary>The database as one practice sees it. Without a practice it is empty.</summary>
internal sealed class PracticeDb(DbContextOptions<PracticeDb> options, HealthSeal? seal = null)
    : IdentityUserContext<Account, Guid>(options)
{
    /// <summary>
    /// The practice whose rows are seen. It reaches the database with each opening of the connection, so it is set
    /// before the first query.
    /// </summary>
    public Guid Practice { get; set; }

    /// <summary>
    /// What somebody at the door says: of an account its id, its sign-in name or its passkey; of a phone link its
    /// fingerprint.
    /// </summary>
    public string AtTheDoor { get; set; } = "";

    /// <summary>Opens and closes health facts.</summary>
    /// <exception cref="InvalidOperationException">The context was made without keys: no health fact is read or written.</exception>
    public HealthSeal Health =>
        seal ?? throw new InvalidOperationException("This context has no keys for health facts.");

    public DbSet<RegisteredPractice> Register => Set<RegisteredPractice>();
    public DbSet<PracticeProfile> Practices => Set<PracticeProfile>();
    public DbSet<Client> Clients => Set<Client>();
    public DbSet<ScreeningRecord> Screenings => Set<ScreeningRecord>();
    public DbSet<Race> Races => Set<Race>();
    public DbSet<OwnFood> OwnFoods => Set<OwnFood>();
    public DbSet<OwnMeasure> OwnMeasures => Set<OwnMeasure>();
    public DbSet<RaceCourse> Courses => Set<RaceCourse>();
    public DbSet<Debrief> Debriefs => Set<Debrief>();
    public DbSet<PlanVersion> PlanVersions => Set<PlanVersion>();
    public DbSet<Rehearsal> Rehearsals => Set<Rehearsal>();
    public DbSet<RehearsalBackground> Backgrounds => Set<RehearsalBackground>();
    public DbSet<PhoneLink> PhoneLinks => Set<PhoneLink>();
    public DbSet<ReceivedFeedback> ReceivedFeedback => Set<ReceivedFeedback>();
    public DbSet<AuditEntry> Audit => Set<AuditEntry>();
    public DbSet<Invitation> Invitations => Set<Invitation>();
    public DbSet<SignInSession> Sessions => Set<SignInSession>();
    public DbSet<MailServer> MailServers => Set<MailServer>();
    public DbSet<Letter> Letters => Set<Letter>();
    public DbSet<LetterDue> LettersDue => Set<LetterDue>();
    public DbSet<ProtectionKey> ProtectionKeys => Set<ProtectionKey>();

    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        builder.ApplyConfigurationsFromAssembly(typeof(PracticeDb).Assembly);
        PlainWords.Map(builder);
        // Row security already hides other practices. The filter says it in the query too, so that a distributed
        // table is asked on one node only.
        builder.Entity<PracticeProfile>().HasQueryFilter(p => p.PracticeId == Practice);
        builder.Entity<Client>().HasQueryFilter(c => c.PracticeId == Practice);
        builder.Entity<ScreeningRecord>().HasQueryFilter(s => s.PracticeId == Practice);
        builder.Entity<Race>().HasQueryFilter(r => r.PracticeId == Practice);
        builder.Entity<OwnFood>().HasQueryFilter(f => f.PracticeId == Practice);
        builder.Entity<OwnMeasure>().HasQueryFilter(m => m.PracticeId == Practice);
        builder.Entity<RaceCourse>().HasQueryFilter(c => c.PracticeId == Practice);
        builder.Entity<Debrief>().HasQueryFilter(d => d.PracticeId == Practice);
        builder.Entity<PlanVersion>().HasQueryFilter(p => p.PracticeId == Practice);
        builder.Entity<Rehearsal>().HasQueryFilter(r => r.PracticeId == Practice);
        builder.Entity<RehearsalBackground>().HasQueryFilter(b => b.PracticeId == Practice);
        builder.Entity<PhoneLink>().HasQueryFilter(l => l.PracticeId == Practice);
        builder.Entity<ReceivedFeedback>().HasQueryFilter(r => r.PracticeId == Practice);
        builder.Entity<AuditEntry>().HasQueryFilter(a => a.PracticeId == Practice);
        builder.Entity<HealthChange>().HasQueryFilter(c => c.PracticeId == Practice);
        builder.Entity<SignInSession>().HasQueryFilter(s => s.PracticeId == Practice);
        builder.Entity<MailServer>().HasQueryFilter(m => m.PracticeId == Practice);
        builder.Entity<Letter>().HasQueryFilter(l => l.PracticeId == Practice);
    }
}
