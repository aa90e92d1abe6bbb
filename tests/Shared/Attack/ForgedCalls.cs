using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Foods.Own;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Service;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Store.Clients;
using Practice.Store.Foods;
using Practice.Store.Plans;
using Practice.Store.Races;
using Practice.Store.Rehearsals;
using Practice.Store.Screening;

namespace Practice.TestSupport.Attack;

/// <summary>
/// Somebody who knows another practice's keys, and even holds its files, calls every task with them: those of a desk and
/// those that a phone link opens.
/// </summary>
internal sealed class ForgedCalls(IServiceProvider services, Victim victim, Victim attacker)
{
    private static readonly JsonSerializerOptions Plain = new()
    {
        ReferenceHandler = ReferenceHandler.IgnoreCycles,
        MaxDepth = 256,
    };

    private static readonly MethodInfo[] Tasks =
    [
        .. from type in typeof(PracticeServices).Assembly.GetExportedTypes()
        where type is { IsClass: true, IsAbstract: false }
        from method in type.GetMethods(
            BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly
        )
        where
            typeof(Task).IsAssignableFrom(method.ReturnType)
            && method.GetParameters() is [var first, ..]
            && (first.ParameterType == typeof(Desk) || first.Name == "secret")
        select method,
    ];

    private static readonly ImmutableDictionary<Type, MethodInfo> Openers = Tasks
        .Where(t =>
            t.ReturnType.IsGenericType
            && t.GetParameters() is [var desk, var key, .., var cancel]
            && (desk.ParameterType, key.ParameterType, cancel.ParameterType)
                == (typeof(Desk), typeof(Guid), typeof(CancellationToken))
            && t.DeclaringType!.Name.StartsWith("Open", StringComparison.Ordinal)
        )
        .DistinctBy(t => t.ReturnType.GetGenericArguments()[0])
        .ToImmutableDictionary(t => t.ReturnType.GetGenericArguments()[0]);

    /// <summary>How many tasks there are to try.</summary>
    public static int Count => Tasks.Length;

    /// <returns>The tasks that told something of the victim.</returns>
    public async Task<ImmutableArray<string>> RunAsync(
        int first,
        int attempts,
        CancellationToken cancel
    )
    {
        var told = new ConcurrentDictionary<string, bool>();
        await Parallel.ForAsync(
            first,
            first + attempts,
            new ParallelOptions { MaxDegreeOfParallelism = 4, CancellationToken = cancel },
            async (attempt, _) =>
            {
                var dice = new Random(attempt);
                var task = Tasks[attempt % Tasks.Length];
                if (await Try(task, dice) is { } outcome && Tells(outcome))
                    told[$"{task.DeclaringType!.Name}.{task.Name}"] = true;
            }
        );
        return [.. told.Keys];
    }

    /// <summary>Whether an outcome says something of the victim.</summary>
    public bool Tells(object outcome) =>
        Say(outcome).Contains(victim.Mark, StringComparison.Ordinal);

    /// <returns>What the task gave back; null when it refused.</returns>
    private async Task<object?> Try(MethodInfo task, Random dice)
    {
        await using var scope = services.CreateAsyncScope();
        var desk = attacker.Desk with { Role = dice.GetItems(Enum.GetValues<StaffRole>(), 1)[0] };
        var arguments = new List<object?>();
        foreach (var parameter in task.GetParameters())
            arguments.Add(await Forge(parameter, desk, dice));
        try
        {
            var outcome = await Call(scope.ServiceProvider, task, arguments);
            // what was handed in is no news, unless it comes back fresh from the file
            return arguments.Contains(outcome) ? null : outcome;
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return null;
        }
    }

    private static async Task<object?> Call(
        IServiceProvider provider,
        MethodInfo task,
        IEnumerable<object?> arguments
    )
    {
        var running = (Task)
            task.Invoke(provider.GetRequiredService(task.DeclaringType!), [.. arguments])!;
        await running;
        return running.GetType().GetProperty("Result")?.GetValue(running);
    }

    private async Task<object?> Forge(ParameterInfo parameter, Desk desk, Random dice)
    {
        var type = parameter.ParameterType;
        if (type == typeof(Desk))
            return desk;
        if (type == typeof(CancellationToken))
            return CancellationToken.None;
        if (type == typeof(Guid) || type == typeof(Guid?))
            return dice.GetItems(victim.Keys, 1)[0];
        if (type == typeof(string))
            return parameter.Name != "secret" ? "forged"
                : dice.Next(2) == 0 ? attacker.Secret
                : AlteredSecret.Of(victim.Secret, dice);
        return Words(type)
            ?? await Files(type, dice)
            ?? (type.IsValueType ? Activator.CreateInstance(type) : null);
    }

    private static object? Words(Type type) =>
        type == typeof(BodyMassEntry)
            ? new BodyMassEntry(new LocalDate(2027, 3, 31), BodyMass.OfKilograms(99))
        : type == typeof(ScreeningAnswers) ? ScreeningAnswers.None
        : type == typeof(FoodSheet) ? SampleFood.Bar with { Name = "forged" }
        : type == typeof(LoadingChoices) ? new LoadingChoices()
        : type == typeof(Feedback) ? new Feedback { ReceivedAt = default, Note = "forged" }
        : type == typeof(RaceDetails)
            ? new RaceDetails
            {
                Name = "forged",
                DistanceKm = 10,
                Start = new LocalDateTime(2027, 5, 1, 9, 0),
                ZoneId = "Europe/London",
            }
        : null;

    /// <summary>The victim's files, read anew each time, since tasks change what they are handed.</summary>
    private async Task<object?> Files(Type type, Random dice)
    {
        var practice = victim.Desk.PracticeId;
        if (type == typeof(OnFile<Client>) || type == typeof(ClientDetails))
        {
            var file = await Get<ClientStore>().Find(practice, victim.ClientId, default);
            return type == typeof(ClientDetails) ? ClientDetails.Of(file!.Value) : file;
        }
        if (type == typeof(OnFile<ScreeningRecord>))
            return await Get<ScreeningStore>().Of(practice, victim.ClientId, default);
        if (type == typeof(OnFile<Race>))
            return await Get<RaceStore>().Find(practice, victim.RaceId, default);
        if (type == typeof(OnFile<OwnFood>))
            return await Get<OwnFoodStore>().Find(practice, victim.FoodId, default);
        if (type == typeof(OnFile<Rehearsal>))
            return await Get<RehearsalStore>().Find(practice, victim.RehearsalId, default);
        if (type == typeof(OnFile<PlanVersion>) || type == typeof(RaceWeekPlan))
        {
            var file = await Get<PlanStore>().Find(practice, victim.PlanId, default);
            return type == typeof(RaceWeekPlan) ? file!.Value.Plan : file;
        }
        // whole files take long to open: one attempt in ten brings one, the others come with empty hands
        return dice.Next(10) == 0 && Openers.TryGetValue(type, out var opener)
            ? await Open(opener)
            : null;
    }

    private async Task<object?> Open(MethodInfo opener)
    {
        foreach (var key in victim.Keys)
        {
            var rest = opener
                .GetParameters()
                .Skip(2)
                .Select(p =>
                    p.ParameterType.IsValueType ? Activator.CreateInstance(p.ParameterType) : null
                );
            if (await Call(services, opener, [victim.Desk, key, .. rest]) is { } file)
                return file;
        }
        return null;
    }

    private T Get<T>()
        where T : class => services.GetRequiredService<T>();

    private static string Say(object outcome)
    {
        try
        {
            return JsonSerializer.Serialize(outcome, outcome.GetType(), Plain);
        }
        catch (Exception e)
            when (e is NotSupportedException or JsonException or InvalidOperationException)
        {
            return outcome.ToString() ?? "";
        }
    }
}
