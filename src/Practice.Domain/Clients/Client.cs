using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Quantities;

namespace Practice.Domain.Clients;

/// <summary>Sex as the published formulas use it.</summary>
public enum Sex
{
    /// <summary>Female.</summary>
    Female,

    /// <summary>Male.</summary>
    Male,
}

/// <summary>A body mass on a day.</summary>
/// <param name="On">Day of weighing.</param>
/// <param name="Mass">Body mass.</param>
public sealed record BodyMassEntry(LocalDate On, BodyMass Mass);

/// <summary>A recent race that tells how fast the client is.</summary>
/// <param name="DistanceKm">Distance, km, 1 to 250.</param>
/// <param name="Time">Finish time.</param>
/// <param name="On">Day of the race.</param>
public sealed record RaceResult(decimal DistanceKm, Duration Time, LocalDate? On = null);

/// <summary>What formulas need to know of a body and its training.</summary>
public sealed record Physique
{
    /// <summary>Sex for formulas.</summary>
    public required Sex Sex { get; init; }

    /// <summary>Height, cm, 100 to 230.</summary>
    public required decimal HeightCm { get; init; }

    /// <summary>Measured body fat, % of body mass, 3 to 60; null when not measured.</summary>
    public decimal? BodyFatPercent { get; init; }

    /// <summary>Measured maximal oxygen uptake, mL/kg/min, 20 to 90; null when not measured.</summary>
    public decimal? Vo2Max { get; init; }

    /// <summary>A recent race, to estimate from when no laboratory value is at hand.</summary>
    public RaceResult? RecentResult { get; init; }

    /// <summary>Usual weekly running distance, km, 0 to 300.</summary>
    public decimal? WeeklyKm { get; init; }

    /// <summary>Asks whether every figure can be one of a body.</summary>
    /// <exception cref="ArgumentException">One cannot; the message says which.</exception>
    public void Check()
    {
        Within(HeightCm, 100, 230, "Height: 100 to 230 cm.");
        Within(BodyFatPercent, 3, 60, "Body fat: 3 to 60 %.");
        Within(Vo2Max, 20, 90, "Oxygen uptake: 20 to 90 mL/kg/min.");
        Within(WeeklyKm, 0, 300, "Weekly distance: 0 to 300 km.");
        Within(RecentResult?.DistanceKm, 1, 250, "The recent race: 1 to 250 km.");
        Within(
            (decimal?)RecentResult?.Time.TotalHours,
            0.01m,
            240,
            "The recent race: a time of less than ten days."
        );
    }

    private static void Within(decimal? value, decimal least, decimal most, string message)
    {
        if (value < least || value > most)
            throw new ArgumentException(message);
    }
}

/// <summary>The athlete in care.</summary>
public sealed class Client
{
    private Client() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>The member of the team whose caseload the client is in; null for nobody's.</summary>
    public Guid? ResponsibleId { get; private set; }

    /// <summary>Given name.</summary>
    public string GivenName { get; private set; } = "";

    /// <summary>Family name.</summary>
    public string FamilyName { get; private set; } = "";

    /// <summary>Where to write to; may be unknown.</summary>
    public string? Email { get; private set; }

    /// <summary>Day of birth.</summary>
    public LocalDate BirthDate { get; private set; }

    /// <summary>Body and training, for formulas.</summary>
    public Physique Physique { get; private set; } = null!;

    /// <summary>What must not be eaten.</summary>
    public Diet Diet { get; private set; } = Diet.Unrestricted;

    /// <summary>What is liked and tolerated.</summary>
    public Tastes Tastes { get; private set; } = Tastes.Unknown;

    /// <summary>Kitchen words of the client's papers.</summary>
    public HouseholdUnits Units { get; private set; }

    /// <summary>IANA key of the time zone the client lives in; null where nobody said.</summary>
    public string? ZoneId { get; private set; }

    /// <summary>The practitioner's notes.</summary>
    public string Notes { get; private set; } = "";

    /// <summary>Weighings, oldest first.</summary>
    public ImmutableList<BodyMassEntry> BodyMassLog { get; private set; } = [];

    /// <summary>Sweat tests, oldest first.</summary>
    public ImmutableList<SweatTest> SweatLog { get; private set; } = [];

    /// <summary>What the client agreed to, oldest first.</summary>
    public ImmutableList<Consent> Consents { get; private set; } = [];

    /// <summary>Why the record must not be erased; null when nothing stands against it.</summary>
    public LegalHold? LegalHold { get; private set; }

    /// <summary>The agreement that stands; null when none was given or it was taken back.</summary>
    public Consent? StandingConsent => Consents.LastOrDefault(c => c.WithdrawnOn is null);

    /// <summary>Full name.</summary>
    public string Name => $"{GivenName} {FamilyName}".Trim();

    /// <summary>The latest weighing; null before the first.</summary>
    public BodyMassEntry? LatestMass => BodyMassLog.IsEmpty ? null : BodyMassLog[^1];

    /// <summary>Takes a client into care.</summary>
    /// <exception cref="ArgumentException">A name is empty or longer than 100 characters.</exception>
    public static Client Register(
        Guid practiceId,
        string givenName,
        string familyName,
        LocalDate birthDate,
        Physique physique,
        BodyMassEntry mass
    )
    {
        ArgumentNullException.ThrowIfNull(physique);
        ArgumentNullException.ThrowIfNull(mass);
        var client = new Client
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            BodyMassLog = [mass],
        };
        client.Identify(givenName, familyName, birthDate, null);
        client.Measure(physique);
        return client;
    }

    /// <summary>Records who the client is.</summary>
    /// <exception cref="ArgumentException">A name is empty or longer than 100 characters.</exception>
    public void Identify(string givenName, string familyName, LocalDate birthDate, string? email)
    {
        GivenName = PersonName(givenName, nameof(givenName));
        FamilyName = PersonName(familyName, nameof(familyName));
        BirthDate = birthDate;
        Email = string.IsNullOrWhiteSpace(email)
            ? null
            : TypedText.Checked(email, 254, "The e-mail address");
    }

    /// <summary>Records body and training.</summary>
    /// <exception cref="ArgumentException">A figure cannot be one of a body.</exception>
    public void Measure(Physique physique)
    {
        ArgumentNullException.ThrowIfNull(physique);
        physique.Check();
        Physique = physique;
    }

    /// <summary>Records a weighing; a second one of the same day replaces the first.</summary>
    public void Weigh(BodyMassEntry entry) =>
        BodyMassLog = [
            .. BodyMassLog.Where(e => e.On != entry.On).Append(entry).OrderBy(e => e.On),
        ];

    /// <summary>Records a sweat test; a second one of the same day replaces the first.</summary>
    /// <exception cref="ArgumentException">A figure is outside what the test states.</exception>
    public void Record(SweatTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        test.Check();
        SweatLog = [.. SweatLog.Where(t => t.On != test.On).Append(test).OrderBy(t => t.On)];
    }

    /// <summary>Takes a sweat test off the log.</summary>
    public void ForgetSweatTest(LocalDate on) => SweatLog = [.. SweatLog.Where(t => t.On != on)];

    /// <summary>Records what must not be eaten.</summary>
    /// <exception cref="ArgumentException">The allergy in words cannot be kept.</exception>
    public void Restrict(Diet diet)
    {
        ArgumentNullException.ThrowIfNull(diet);
        Diet = diet.OtherAllergy is { } words
            ? diet with
            {
                OtherAllergy = TypedText.Checked(words, 500, "The other allergy", ofLines: true),
            }
            : diet;
    }

    /// <summary>Records what is liked.</summary>
    public void Prefer(Tastes tastes) => Tastes = tastes;

    /// <summary>Chooses the kitchen words of the client's papers.</summary>
    public void Speak(HouseholdUnits units) => Units = units;

    /// <summary>Records the time zone the client lives in.</summary>
    /// <exception cref="ArgumentException">The zone is unknown.</exception>
    public void LiveIn(string? zoneId)
    {
        if (zoneId is not null && DateTimeZoneProviders.Tzdb.GetZoneOrNull(zoneId) is null)
            throw new ArgumentException($"'{zoneId}' is not a known time zone.", nameof(zoneId));
        ZoneId = zoneId;
    }

    /// <summary>Puts the client into a member's caseload, or into nobody's.</summary>
    public void Assign(Guid? accountId) => ResponsibleId = accountId;

    /// <summary>Records that the client agreed; what stood before is kept as history.</summary>
    public void Agree(Consent consent)
    {
        ArgumentNullException.ThrowIfNull(consent);
        TakeBackConsent(consent.On);
        Consents = Consents.Add(consent);
    }

    /// <summary>Records that the client took the agreement back.</summary>
    public void TakeBackConsent(LocalDate on) =>
        Consents = [
            .. Consents.Select(c => c.WithdrawnOn is null ? c with { WithdrawnOn = on } : c),
        ];

    /// <summary>Sets or ends what stands against erasing.</summary>
    public void Keep(LegalHold? hold) => LegalHold = hold;

    /// <summary>Replaces the notes.</summary>
    /// <exception cref="ArgumentException">They are too long, or hold what no database keeps.</exception>
    public void Annotate(string notes) =>
        Notes = TypedText.Checked(notes, 10_000, "The notes", ofLines: true);

    /// <summary>Age in whole years on a day.</summary>
    public int AgeOn(LocalDate day) => Period.Between(BirthDate, day, PeriodUnits.Years).Years;

    private static string PersonName(string name, string parameter)
    {
        var trimmed = TypedText.Checked(name, 1000, "A name");
        return trimmed.Length is > 0 and <= 100
            ? trimmed
            : throw new ArgumentException("A name has 1 to 100 characters.", parameter);
    }
}
