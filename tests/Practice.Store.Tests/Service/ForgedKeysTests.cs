using System.Collections.Concurrent;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using Npgsql;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Foods.Own;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;
using Practice.Service;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Service.Races;
using Practice.Store.Clients;
using Practice.Store.Foods;
using Practice.Store.Plans;
using Practice.Store.Races;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

/// <summary>
/// Somebody of one practice who knows the keys of another, and even holds its files, tries every task with them. Nothing of
/// the other practice may change or be told.
/// </summary>
public sealed class ForgedKeysTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private const int Attempts = 20_000;

    /// <summary>In the names of what must stay unseen.</summary>
    private const string Mark = "Harbour Marathon";

    private static readonly JsonSerializerOptions Plain = new()
    {
        ReferenceHandler = ReferenceHandler.IgnoreCycles,
        MaxDepth = 256,
    };

    [Fact]
    public async Task Twenty_thousand_forged_calls_change_and_tell_nothing_of_another_practice()
    {
        var victim = practice.Practitioner;
        var clientId = await practice.NewClient();
        var raceId = await practice.NewRace(clientId);
        var plan = await practice.NewDraft(raceId);
        var food = await practice
            .Get<KeepFood>()
            .Run(victim, SampleFood.Bar with { Name = Mark }, Cancel);
        Guid[] keys =
        [
            clientId,
            raceId,
            plan.Version.Value.Id,
            Assert.IsType<FoodKept>(food).Key,
            victim.AccountId,
            victim.PracticeId,
        ];
        var attacker = await practice.FoundPractice("Across the road");

        // a leak would be seen: to the practice itself the same is told
        var own = await practice.Get<OpenRace>().Run(victim, raceId, null, Cancel);
        Assert.Contains(Mark, Say(own!), StringComparison.Ordinal);
        var before = await Digest(victim.PracticeId);
        var tasks = Tasks().ToArray();
        var told = new ConcurrentBag<string>();
        await Parallel.ForAsync(
            0,
            Attempts,
            new ParallelOptions { MaxDegreeOfParallelism = 4, CancellationToken = Cancel },
            async (attempt, _) =>
            {
                var dice = new Random(attempt);
                var task = tasks[attempt % tasks.Length];
                var role = dice.GetItems(Enum.GetValues<StaffRole>(), 1)[0];
                if (
                    await Try(task, attacker with { Role = role }, victim, keys, dice)
                        is { } outcome
                    && Say(outcome).Contains(Mark, StringComparison.Ordinal)
                )
                    told.Add($"{task.DeclaringType!.Name}.{task.Name}");
            }
        );

        Assert.Empty(told.Distinct());
        Assert.Equal(before, await Digest(victim.PracticeId));
    }

    private static IEnumerable<MethodInfo> Tasks() =>
        from type in typeof(PracticeServices).Assembly.GetExportedTypes()
        where type is { IsClass: true, IsAbstract: false }
        from method in type.GetMethods(
            BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly
        )
        where
            typeof(Task).IsAssignableFrom(method.ReturnType)
            && method.GetParameters() is [{ ParameterType: var first }, ..]
            && first == typeof(Desk)
        select method;

    /// <returns>What the task gave back; null when it refused.</returns>
    private async Task<object?> Try(
        MethodInfo task,
        Desk attacker,
        Desk victim,
        Guid[] keys,
        Random dice
    )
    {
        await using var scope = practice.Services.CreateAsyncScope();
        var arguments = new List<object?>();
        foreach (var parameter in task.GetParameters())
            arguments.Add(await Forge(parameter.ParameterType, attacker, victim, keys, dice));
        try
        {
            var running = (Task)
                task.Invoke(
                    scope.ServiceProvider.GetRequiredService(task.DeclaringType!),
                    [.. arguments]
                )!;
            await running;
            var outcome = running.GetType().GetProperty("Result")?.GetValue(running);
            // what was handed in is no news, unless it comes back fresh from the file
            return arguments.Contains(outcome) ? null : outcome;
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            return null;
        }
    }

    private async Task<object?> Forge(
        Type type,
        Desk attacker,
        Desk victim,
        Guid[] keys,
        Random dice
    )
    {
        if (type == typeof(Desk))
            return attacker;
        if (type == typeof(CancellationToken))
            return Cancel;
        if (type == typeof(Guid) || type == typeof(Guid?))
            return dice.GetItems(keys, 1)[0];
        if (type == typeof(string))
            return "forged";
        if (type == typeof(BodyMassEntry))
            return new BodyMassEntry(new LocalDate(2027, 3, 31), BodyMass.OfKilograms(99));
        if (type == typeof(ScreeningAnswers))
            return ScreeningAnswers.None;
        if (type == typeof(LoadingChoices))
            return new LoadingChoices();
        if (type == typeof(RaceDetails))
            return new RaceDetails
            {
                Name = "forged",
                DistanceKm = 10,
                Start = new LocalDateTime(2027, 5, 1, 9, 0),
                ZoneId = "Europe/London",
            };
        // files are read anew each time, since tasks change what they are handed
        if (type == typeof(OnFile<Client>) || type == typeof(ClientDetails))
        {
            var file = await practice.Get<ClientStore>().Find(victim.PracticeId, keys[0], Cancel);
            return type == typeof(ClientDetails) ? ClientDetails.Of(file!.Value) : file;
        }
        if (type == typeof(OnFile<Race>))
            return await practice.Get<RaceStore>().Find(victim.PracticeId, keys[1], Cancel);
        if (type == typeof(OnFile<PlanVersion>))
            return await practice.Get<PlanStore>().Find(victim.PracticeId, keys[2], Cancel);
        if (type == typeof(OnFile<OwnFood>))
            return await practice.Get<OwnFoodStore>().Find(victim.PracticeId, keys[3], Cancel);
        if (type == typeof(FoodSheet))
            return SampleFood.Bar with { Name = "forged" };
        if (type == typeof(RaceWeekPlan))
            return (await practice.Get<PlanStore>().Find(victim.PracticeId, keys[2], Cancel))!
                .Value
                .Plan;
        return type.IsValueType ? Activator.CreateInstance(type) : null;
    }

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

    /// <summary>All rows of a practice, as one word.</summary>
    private async Task<string> Digest(Guid practiceId)
    {
        var source = practice.Get<NpgsqlDataSource>();
        await using var connection = await source.OpenConnectionAsync(Cancel);
        await Ask(connection, $"select set_config('practice.id', '{practiceId}', false)");
        var tables = await Ask(
            connection,
            "select table_name::text from information_schema.columns where column_name = 'practice_id' and table_schema = 'public' order by 1"
        );
        Assert.Contains("client", tables);
        var words = new List<string>();
        foreach (var table in tables)
            words.AddRange(
                await Ask(
                    connection,
                    $"select '{table} ' || coalesce(md5(string_agg(t::text, '|' order by t::text)), 'empty') from {table} t where practice_id = '{practiceId}'"
                )
            );
        return string.Join('\n', words);
    }

    private static async Task<List<string>> Ask(NpgsqlConnection connection, string question)
    {
        await using var command = new NpgsqlCommand(question, connection);
        await using var reader = await command.ExecuteReaderAsync(Cancel);
        var answers = new List<string>();
        while (await reader.ReadAsync(Cancel))
            answers.Add(reader.GetString(0));
        return answers;
    }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;
}
