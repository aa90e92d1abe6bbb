using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using Practice.Domain.Course;
using Practice.Domain.Plans;
using Practice.Planner;
using Practice.Planner.Course;
using Practice.Service.Accounts;
using Practice.Service.Audit;
using Practice.Service.Clients;
using Practice.Service.Courses;
using Practice.Service.Debriefs;
using Practice.Service.Demo;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Service.Hosting;
using Practice.Service.Mail;
using Practice.Service.News;
using Practice.Service.Plans;
using Practice.Service.Portal;
using Practice.Service.Practices;
using Practice.Service.Practices.Brand;
using Practice.Service.Privacy;
using Practice.Service.Races;
using Practice.Service.Rehearsals;
using Practice.Service.Screening;
using Practice.Service.Tables;
using Practice.Service.Team;
using Practice.Service.Today;
using Practice.Service.Weeks;
using Practice.Store;
using Practice.Store.Accounts;

namespace Practice.Service;

/// <summary>Registers the tasks and all that stands behind them.</summary>
public static class PracticeServices
{
    /// <param name="services">Where to register.</param>
    /// <param name="database">The database of this process; it need not be ready yet.</param>
    /// <param name="settings">Settings of the practice as a whole.</param>
    public static IServiceCollection AddPractice(
        this IServiceCollection services,
        RunningDatabase database,
        PracticeSettings settings
    )
    {
        services.AddPracticeStore(() => database.ConnectionString, database.Certificate);
        services.AddSingleton(settings);
        services.AddSingleton(_ => SetUpCode.Of(database));
        services.AddSingleton<IClock>(SystemClock.Instance);
        services.AddSingleton(provider => new PracticeCalendar(
            provider.GetRequiredService<IClock>(),
            settings.Zone
        ));
        services.AddSingleton<MenuPlanner>();
        services.AddSingleton<IMenuPlanner>(provider => provider.GetRequiredService<MenuPlanner>());
        services.AddSingleton<ICourseScheduler, CourseScheduler>();
        services.AddHostedService<WarmDatabase>();
        services.AddHostedService<WarmPlanner>();
        return services.AddAccounts().AddMail().AddTeam().AddTasks();
    }

    private static IServiceCollection AddAccounts(this IServiceCollection services)
    {
        services
            .AddIdentityCore<Account>(options =>
            {
                options.User.RequireUniqueEmail = true;
                options.Password.RequiredLength = 12;
                options.Password.RequireDigit = false;
                options.Password.RequireUppercase = false;
                options.Password.RequireNonAlphanumeric = false;
                options.Lockout.MaxFailedAccessAttempts = 5;
            })
            .AddSignInManager<Door>()
            .AddPasswordValidator<PasswordRules>()
            .AddDefaultTokenProviders()
            .AddClaimsPrincipalFactory<DeskClaimsFactory>();
        services.AddHttpContextAccessor();
        services.AddAuthenticationCore();
        services.Configure<DataProtectionTokenProviderOptions>(tokens =>
            tokens.TokenLifespan = TimeSpan.FromHours(2)
        );
        services.Configure<IdentityPasskeyOptions>(passkeys =>
        {
            // a passkey stands for both steps, so the machine must know its owner, and find the key without a name
            passkeys.UserVerificationRequirement = "required";
            passkeys.ResidentKeyRequirement = "required";
        });
        return services
            .AddScoped<SignIn>()
            .AddScoped<SignOut>()
            .AddScoped<NewAccounts>()
            .AddScoped<FoundPractice>()
            .AddScoped<OwnAccount>()
            .AddScoped<OpenAccount>()
            .AddScoped<AddPasskey>()
            .AddScoped<RemovePasskey>()
            .AddScoped<SignInWithPasskey>()
            .AddScoped<SignInWithCode>()
            .AddScoped<SetUpAuthenticator>()
            .AddScoped<DropAuthenticator>()
            .AddScoped<NewRecoveryCodes>()
            .AddScoped<ChangePassword>()
            .AddScoped<EndSession>()
            .AddScoped<AcceptInvitation>()
            .AddScoped<AskForReset>()
            .AddScoped<PrintResetLink>()
            .AddScoped<ResetPassword>()
            .AddSingleton<Installation>()
            .AddSingleton<OngoingSession>();
    }

    private static IServiceCollection AddMail(this IServiceCollection services) =>
        services
            .AddSingleton<LetterSeal>()
            .AddSingleton<LetterDesk>()
            .AddSingleton<Carrier>()
            .AddHostedService<Postman>()
            .AddSingleton<OpenMail>()
            .AddSingleton<SetMailServer>()
            .AddSingleton<TryMailServer>()
            .AddSingleton<Addressees>()
            .AddSingleton<SendHandout>()
            .AddSingleton<SendLink>()
            .AddSingleton<SendReminder>()
            .AddSingleton<SendThanks>()
            .AddSingleton<Reminders>()
            .AddHostedService<RemindersByDay>()
            .AddSingleton<LettersToClient>();

    private static IServiceCollection AddTeam(this IServiceCollection services) =>
        services
            .AddSingleton<OpenTeam>()
            .AddSingleton<InviteMember>()
            .AddSingleton<WithdrawInvitation>()
            .AddSingleton<ChangeRole>()
            .AddSingleton<LetIn>()
            .AddSingleton<AssignClient>()
            .AddSingleton<HandOverCaseload>();

    private static IServiceCollection AddTasks(this IServiceCollection services) =>
        services
            .AddSingleton<OpenPractice>()
            .AddSingleton<SetBrand>()
            .AddSingleton<SetDefaults>()
            .AddSingleton<RecordConsent>()
            .AddSingleton<ExportClient>()
            .AddSingleton<EraseClient>()
            .AddSingleton<Retention>()
            .AddHostedService<NightlyRetention>()
            .AddSingleton<PreviewPaper>()
            .AddSingleton<RecordReads>()
            .AddSingleton<ReadAudit>()
            .AddSingleton<FindClients>()
            .AddSingleton<OpenClient>()
            .AddSingleton<RegisterClient>()
            .AddSingleton<ReviseClient>()
            .AddSingleton<WeighClient>()
            .AddSingleton<RecordSweatTest>()
            .AddSingleton<Larder>()
            .AddSingleton<OpenOwnFoods>()
            .AddSingleton<KeepFood>()
            .AddSingleton<AddMeasure>()
            .AddSingleton<PlansAtRisk>()
            .AddSingleton<ReadTable>()
            .AddSingleton<ImportFoods>()
            .AddSingleton<ImportClients>()
            .AddSingleton<CurrentScreening>()
            .AddSingleton<AnswerScreening>()
            .AddSingleton<ClearHold>()
            .AddSingleton<RaceCases>()
            .AddSingleton<OpenRace>()
            .AddSingleton<EnterRace>()
            .AddSingleton<CorrectRace>()
            .AddSingleton<Stove>()
            .AddSingleton<OpenCourse>()
            .AddSingleton<BeginCourse>()
            .AddSingleton<SaveCourse>()
            .AddSingleton<ReadCourseFile>()
            .AddSingleton<CourseDesk>()
            .AddSingleton<GutsRehearsed>()
            .AddSingleton<CoursesInPlans>()
            .AddSingleton<PutCourseInPlan>()
            .AddSingleton<Kitchen>()
            .AddSingleton<RaceDayMenus>()
            .AddSingleton<LayOutWeek>()
            .AddSingleton<DraftPlan>()
            .AddSingleton<OpenPlan>()
            .AddSingleton<SaveDraft>()
            .AddSingleton<IssuePlan>()
            .AddSingleton<BeginVersion>()
            .AddSingleton<WithdrawPlan>()
            .AddSingleton<PrintPlan>()
            .AddSingleton<OpenDebrief>()
            .AddSingleton<RecordDebrief>()
            .AddSingleton<RecallLastRace>()
            .AddSingleton<PlanAsCalendar>()
            .AddSingleton<FollowCalendar>()
            .AddSingleton<LiveNews>()
            .AddSingleton<WarningHolds>()
            .AddSingleton<RehearsalCalendars>()
            .AddSingleton<ReviseBackground>()
            .AddSingleton<ProposeRehearsals>()
            .AddSingleton<BookRehearsal>()
            .AddSingleton<MoveRehearsal>()
            .AddSingleton<CancelRehearsal>()
            .AddSingleton<RecordFeedback>()
            .AddSingleton<ReadTrials>()
            .AddSingleton<OpenRehearsal>()
            .AddSingleton<PlanRevision>()
            .AddSingleton<DecideRehearsal>()
            .AddSingleton<PrintRehearsal>()
            .AddSingleton<LinkDoor>()
            .AddSingleton<GiveLink>()
            .AddSingleton<RevokeLink>()
            .AddSingleton<LinksOfRace>()
            .AddSingleton<OpenLink>()
            .AddSingleton<SubmitFeedback>()
            .AddSingleton<TodaysWork>()
            .AddSingleton<DemoRehearsals>()
            .AddSingleton<DemoCourses>()
            .AddSingleton<UnfinishedDemo>()
            .AddSingleton<DemoPlans>()
            .AddHostedService(provider => provider.GetRequiredService<DemoPlans>())
            .AddScoped<DemoPractice>();
}
