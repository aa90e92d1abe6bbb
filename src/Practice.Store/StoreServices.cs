using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Npgsql;
using Practice.Store.Accounts;
using Practice.Store.Audit;
using Practice.Store.Clients;
using Practice.Store.Courses;
using Practice.Store.Debriefs;
using Practice.Store.Foods;
using Practice.Store.Mail;
using Practice.Store.News;
using Practice.Store.Plans;
using Practice.Store.Portal;
using Practice.Store.Practices;
using Practice.Store.Races;
using Practice.Store.Rehearsals;
using Practice.Store.Screening;
using Practice.Store.Sealing;

namespace Practice.Store;

/// <summary>Registers all that touches the database.</summary>
public static class StoreServices
{
    /// <param name="services">Where to register.</param>
    /// <param name="connectionString">The connection of the application's own role, from <see cref="PracticeDatabase"/>.</param>
    /// <param name="certificate">What the keys in the database are wrapped with.</param>
    public static IServiceCollection AddPracticeStore(
        this IServiceCollection services,
        string connectionString,
        KeyCertificate? certificate = null
    ) => services.AddPracticeStore(() => connectionString, certificate ?? KeyCertificate.None);

    /// <inheritdoc cref="AddPracticeStore(IServiceCollection, string, KeyCertificate?)" />
    /// <param name="services">Where to register.</param>
    /// <param name="connectionString">Gives the connection, asked when something first turns to the database.</param>
    /// <param name="certificate">What the keys in the database are wrapped with.</param>
    public static IServiceCollection AddPracticeStore(
        this IServiceCollection services,
        Func<string> connectionString,
        KeyCertificate certificate
    )
    {
        services.AddSingleton(_ => PracticeDbOptions.Source(connectionString()));
        services.AddDbContextFactory<PracticeDb>(
            (provider, options) =>
                options.UsePractice(provider.GetRequiredService<NpgsqlDataSource>())
        );
        services.Configure<IdentityOptions>(PracticeDbOptions.SetIdentityVersion);
        services.AddScoped<IUserStore<Account>, AccountStore>();
        services.AddKeyRing(certificate);
        services.AddHealthChecks().AddCheck<DatabaseHealth>("database");

        services.AddStore(contexts => new Turn(contexts));
        services.AddStore(contexts => new ClientStore(contexts));
        services.AddStore(contexts => new ScreeningStore(contexts));
        services.AddStore(contexts => new RaceStore(contexts));
        services.AddStore(contexts => new OwnFoodStore(contexts));
        services.AddStore(contexts => new CourseStore(contexts));
        services.AddStore(contexts => new DebriefStore(contexts));
        services.AddStore(contexts => new PlanStore(contexts));
        services.AddStore(contexts => new RehearsalStore(contexts));
        services.AddStore(contexts => new BackgroundStore(contexts));
        services.AddStore(contexts => new PhoneLinkStore(contexts));
        services.AddStore(contexts => new FeedbackStore(contexts));
        services.AddSingleton(provider => new PracticeStore(
            provider.GetRequiredService<IDbContextFactory<PracticeDb>>(),
            provider.GetRequiredService<NpgsqlDataSource>()
        ));
        services.AddStore(contexts => new AuditLog(contexts));
        services.AddStore(contexts => new SessionStore(contexts));
        services.AddStore(contexts => new InvitationStore(contexts));
        services.AddStore(contexts => new TeamStore(contexts));
        services.AddStore(contexts => new LetterStore(contexts));
        services.AddStore(contexts => new MailServerStore(contexts));
        services.AddSingleton(provider => new PracticeNews(
            connectionString(),
            provider.GetRequiredService<ILogger<PracticeNews>>()
        ));
        services.AddHostedService(provider => provider.GetRequiredService<PracticeNews>());
        return services;
    }

    private static void AddStore<T>(
        this IServiceCollection services,
        Func<IDbContextFactory<PracticeDb>, T> make
    )
        where T : class =>
        services.AddSingleton(provider =>
            make(provider.GetRequiredService<IDbContextFactory<PracticeDb>>())
        );
}
