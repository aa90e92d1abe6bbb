using System.Reflection;
using Microsoft.Extensions.DependencyInjection;
using Practice.Domain.Practices;
using Practice.Service;
using Practice.Service.Accounts;
using Practice.Service.Courses;
using Practice.Service.Desks;
using Practice.Service.Mail;
using Practice.Service.Plans;
using Practice.Service.Portal;
using Practice.Service.Practices;
using Practice.Service.Practices.Brand;
using Practice.Service.Privacy;
using Practice.Service.Tables;
using Practice.Service.Team;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

/// <summary>
/// Who may what, asked of the tasks themselves: each is called for each role with nothing else in hand, so it has to
/// refuse before it looks at anything.
/// </summary>
public sealed class PermissionsTests(TestPractice practice) : IClassFixture<TestPractice>
{
    /// <summary>Tasks for somebody who has no desk yet, or has a private link instead of one.</summary>
    private static readonly Type[] AtTheDoor =
    [
        typeof(SignIn),
        typeof(SignOut),
        typeof(SignInWithPasskey),
        typeof(SignInWithCode),
        typeof(AskForReset),
        typeof(ResetPassword),
        typeof(PrintResetLink),
        typeof(AcceptInvitation),
        typeof(FoundPractice),
        typeof(OpenLink),
        typeof(SubmitFeedback),
        typeof(FollowCalendar),
        // the rounds act for nobody
        typeof(Retention),
        typeof(Reminders),
    ];

    /// <summary>Work on what it is handed; nothing of a practice is read or written.</summary>
    private static readonly Type[] Tools =
    [
        typeof(Stove),
        typeof(ReadCourseFile),
        typeof(ReadTable),
        typeof(PreviewPaper),
    ];

    private static readonly string[] Deciders =
    [
        "AddMeasure.Remove",
        "AddMeasure.Run",
        "AssignClient.Run",
        "ClearHold.Run",
        "DecideRehearsal.Run",
        "ExportClient.Run",
        "HandOverCaseload.Run",
        "ImportFoods.Preview",
        "ImportFoods.Run",
        "IssuePlan.Run",
        "KeepFood.PutBack",
        "KeepFood.Retire",
        "KeepFood.Revise",
        "KeepFood.Run",
        "WithdrawPlan.Run",
    ];

    private static readonly string[] Owners =
    [
        "ChangeRole.Run",
        "EraseClient.Keep",
        "EraseClient.Release",
        "EraseClient.Run",
        "InviteMember.Run",
        "LetIn.Run",
        "OpenMail.Run",
        "ReadAudit.Export",
        "ReadAudit.Run",
        "SetBrand.Open",
        "SetBrand.Run",
        "SetDefaults.Run",
        "SetMailServer.Run",
        "TryMailServer.Run",
        "WithdrawInvitation.Run",
    ];

    [Fact]
    public void Every_task_asks_for_a_desk_unless_it_is_one_of_those_at_the_door()
    {
        var without = Tasks()
            .Except(AtTheDoor)
            .Except(Tools)
            .Where(task => !Entrances(task).Any(e => e.Name == "Run"))
            .Select(task => task.Name);
        Assert.Empty(without);
        Assert.Contains(typeof(IssuePlan), Tasks());
    }

    [Fact]
    public async Task No_role_gets_what_is_not_its_own_and_every_role_gets_what_is()
    {
        var refused = new Dictionary<StaffRole, List<string>>();
        foreach (var role in Enum.GetValues<StaffRole>())
        {
            refused[role] = [];
            foreach (var entrance in Tasks().Except(AtTheDoor).SelectMany(Entrances))
                if (await Refuses(entrance, practice.Practitioner with { Role = role }))
                    refused[role].Add($"{entrance.DeclaringType!.Name}.{entrance.Name}");
        }
        Assert.Equal(
            Deciders.Concat(Owners).Order(StringComparer.Ordinal),
            refused[StaffRole.Assistant].Distinct().Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            Owners,
            refused[StaffRole.Practitioner].Distinct().Order(StringComparer.Ordinal)
        );
        Assert.Empty(refused[StaffRole.Owner]);
    }

    private static IEnumerable<Type> Tasks() =>
        typeof(PracticeServices)
            .Assembly.GetExportedTypes()
            .Where(t => t is { IsClass: true, IsAbstract: false } && HasRun(t));

    private static bool HasRun(Type type) =>
        type.GetMethods(BindingFlags.Public | BindingFlags.Instance).Any(m => m.Name == "Run");

    private static IEnumerable<MethodInfo> Entrances(Type task) =>
        task.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(m =>
                typeof(Task).IsAssignableFrom(m.ReturnType)
                && m.GetParameters() is [{ ParameterType: var first }, ..]
                && first == typeof(Desk)
            );

    private async Task<bool> Refuses(MethodInfo entrance, Desk desk)
    {
        await using var scope = practice.Services.CreateAsyncScope();
        var task = scope.ServiceProvider.GetRequiredService(entrance.DeclaringType!);
        object?[] nothing =
        [
            desk,
            .. entrance
                .GetParameters()
                .Skip(1)
                .Select(p =>
                    p.ParameterType == typeof(CancellationToken)
                        ? TestContext.Current.CancellationToken
                    : p.ParameterType.IsValueType ? Activator.CreateInstance(p.ParameterType)
                    : null
                ),
        ];
        try
        {
            var running = (Task)entrance.Invoke(task, nothing)!;
            await running;
            var outcome = running.GetType().GetProperty("Result")?.GetValue(running);
            return outcome?.GetType().Name.EndsWith("NotAllowed", StringComparison.Ordinal)
                ?? false;
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return (e is TargetInvocationException { InnerException: { } inner } ? inner : e)
                is NotAllowedException;
        }
    }
}
