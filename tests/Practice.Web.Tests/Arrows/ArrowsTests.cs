using ArchUnitNET.Domain;
using ArchUnitNET.Fluent.Syntax.Elements.Types;
using ArchUnitNET.Loader;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace Practice.Web.Tests.Arrows;

/// <summary>The arrows as compiled types draw them; a broken one names the type and what it reaches.</summary>
public class ArrowsTests
{
    /// <summary>Inside Domain each namespace may use those before it, never those after.</summary>
    private static readonly string[] DomainOrder =
    [
        "Quantities",
        "Evidence",
        "Tables",
        "Foods",
        "Practices",
        "Clients",
        "Physiology",
        "Screening",
        "Races",
        "Targets",
        "Course",
        "Plans",
        "Rehearsals",
        "Debriefs",
        "Caseload",
    ];

    private static readonly System.Reflection.Assembly Domain =
        typeof(Practice.Domain.Plans.RaceWeekPlan).Assembly;
    private static readonly System.Reflection.Assembly Planner =
        typeof(Practice.Planner.MenuPlanner).Assembly;
    private static readonly System.Reflection.Assembly Handouts =
        typeof(Practice.Handouts.HandoutPdf).Assembly;
    private static readonly System.Reflection.Assembly Store =
        typeof(Practice.Store.PracticeDatabase).Assembly;
    private static readonly System.Reflection.Assembly Service =
        typeof(Practice.Service.PracticeServices).Assembly;
    private static readonly System.Reflection.Assembly Web = typeof(Program).Assembly;

    private static readonly Architecture Practice = new ArchLoader()
        .LoadAssemblies(Domain, Planner, Handouts, Store, Service, Web)
        .Build();

    public static TheoryData<string, string> Forbidden =>
        new()
        {
            { nameof(Domain), nameof(Planner) },
            { nameof(Domain), nameof(Handouts) },
            { nameof(Domain), nameof(Store) },
            { nameof(Domain), nameof(Service) },
            { nameof(Domain), nameof(Web) },
            { nameof(Planner), nameof(Handouts) },
            { nameof(Planner), nameof(Store) },
            { nameof(Planner), nameof(Service) },
            { nameof(Handouts), nameof(Planner) },
            { nameof(Handouts), nameof(Store) },
            { nameof(Handouts), nameof(Service) },
            { nameof(Store), nameof(Planner) },
            { nameof(Store), nameof(Handouts) },
            { nameof(Store), nameof(Service) },
            { nameof(Service), nameof(Web) },
            { nameof(Web), nameof(Store) },
            { nameof(Web), nameof(Planner) },
            { nameof(Web), nameof(Handouts) },
        };

    [Theory]
    [MemberData(nameof(Forbidden))]
    public void No_arrow_points_back_or_past_a_wall(string from, string to) =>
        Check(
            Types()
                .That()
                .ResideInAssembly(Of(from))
                .Should()
                .NotDependOnAny(Types().That().ResideInAssembly(Of(to)))
        );

    public static TheoryData<string, string> Later
    {
        get
        {
            var pairs = new TheoryData<string, string>();
            for (var i = 0; i < DomainOrder.Length; i++)
            for (var j = i + 1; j < DomainOrder.Length; j++)
                if (Exists(DomainOrder[i]) && Exists(DomainOrder[j]))
                    pairs.Add(DomainOrder[i], DomainOrder[j]);
            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Later))]
    public void Inside_Domain_knowledge_flows_one_way(string earlier, string later) =>
        Check(
            Types()
                .That()
                .ResideInNamespaceMatching(Namespace(earlier))
                .Should()
                .NotDependOnAny(Types().That().ResideInNamespaceMatching(Namespace(later)))
        );

    [Fact]
    public void Every_namespace_of_Domain_has_its_place_in_the_order() =>
        Assert.Empty(
            Domain
                .GetTypes()
                .Select(t => t.Namespace)
                .OfType<string>()
                .Where(n => n.StartsWith("Practice.Domain.", StringComparison.Ordinal))
                .Select(n => n.Split('.')[2])
                .Distinct()
                .Except(DomainOrder)
        );

    private static bool Exists(string part) =>
        Domain
            .GetTypes()
            .Any(t =>
                t.Namespace?.StartsWith($"Practice.Domain.{part}", StringComparison.Ordinal) == true
            );

    private static string Namespace(string part) => $@"^Practice\.Domain\.{part}(\.|$)";

    private static System.Reflection.Assembly Of(string name) =>
        name switch
        {
            nameof(Domain) => Domain,
            nameof(Planner) => Planner,
            nameof(Handouts) => Handouts,
            nameof(Store) => Store,
            nameof(Service) => Service,
            nameof(Web) => Web,
            _ => throw new ArgumentOutOfRangeException(nameof(name), name, null),
        };

    private static void Check(TypesShouldConjunction rule)
    {
        var broken = rule.Evaluate(Practice)
            .Where(r => !r.Passed)
            .Select(r => r.Description)
            .ToList();
        Assert.True(broken.Count == 0, string.Join(Environment.NewLine, broken));
    }
}
