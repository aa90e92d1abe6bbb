using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;
using Practice.Domain.Plans;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Service.Plans;
using Practice.Store.Audit;
using Practice.Store.Foods;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

/// <summary>A practice's own foods: kept, served like the library's, kept away from whom they would harm.</summary>
public sealed class OwnFoodTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Desk Desk => practice.Practitioner;

    [Fact]
    public async Task The_planner_serves_an_own_food_where_its_role_says()
    {
        var rice = await Kept(SampleFood.Rice);
        var file = await Draft();
        Assert.Contains(file.Foods.Allowed, f => f.Id == rice.Food.Id);

        // nothing else to build a main meal on
        var foods = file.Foods.Allowed.Where(f => f.IsOwn || !f.Roles.Any(IsStaple));
        var kitchen = file with { Foods = file.Foods with { Allowed = [.. foods] } };
        var menu = await practice
            .Get<Kitchen>()
            .Build(kitchen, file.Version.Value.Plan, null, Cancel);
        var served = menu
            .Days.SelectMany(d => d.Occasions)
            .SelectMany(o => o.Portions)
            .First(p => p.FoodId == rice.Food.Id);
        Assert.Equal((MealRole.Rice, SampleFood.Rice.Name), (served.Role, served.Name));

        static bool IsStaple(FoodRole part) =>
            part.Role
                is MealRole.Rice
                    or MealRole.Noodles
                    or MealRole.Pasta
                    or MealRole.Potato
                    or MealRole.Grain
                    or MealRole.Pizza
                    or MealRole.SavouryCake;
    }

    [Fact]
    public async Task An_own_food_is_kept_away_from_a_client_who_is_allergic_to_it()
    {
        var food = await Kept(Bar("Milky fig bar"));
        var allergic = Diet.Unrestricted with { Allergies = [Allergen.Milk] };
        var file = await Draft(allergic);

        Assert.DoesNotContain(file.Foods.AddableByHand, f => f.Id == food.Food.Id);
        Assert.True(file.Foods.Excluded.Single(e => e.Food.Id == food.Food.Id).IsSafety);
        Assert.DoesNotContain(await SwapsForSnacks(file), s => s.Portion.FoodId == food.Food.Id);
    }

    [Fact]
    public async Task An_issued_plan_reads_the_same_after_its_food_was_changed_or_retired()
    {
        var food = await Kept(Bar("Issued fig bar"));
        var file = await With(await Draft(), food.Food);
        var issued = file.Version.Value.Id;
        Assert.IsType<Issued>(await practice.Get<IssuePlan>().Run(Desk, file.Version, Cancel));
        var before = (await practice.Open(issued)).Version.Value.Plan;

        await Revise(
            food,
            SampleFood.Bar with
            {
                Name = "Another bar altogether",
                Per100G = SampleFood.Bar.Per100G with { CarbohydrateG = 60, SugarsG = 38 },
            }
        );
        await practice.Get<KeepFood>().Retire(Desk, await OnFile(food.Id), Cancel);

        var after = (await practice.Open(issued)).Version.Value.Plan;
        Assert.Equivalent(before, after, strict: true);
        Assert.Contains(
            after.Days.SelectMany(d => d.Occasions).SelectMany(o => o.Portions),
            p => p.FoodId == food.Food.Id && p.Name == "Issued fig bar"
        );
    }

    [Fact]
    public async Task An_allergen_learnt_late_stops_the_drafts_that_hold_the_food_even_a_retired_one()
    {
        var safe = Bar("Safe fig bar") with
        {
            Allergens = [Allergen.Wheat],
            Per100G = SampleFood.Bar.Per100G with { LactoseG = null },
        };
        var food = await Kept(safe);
        var nuts = Diet.Unrestricted with { Allergies = [Allergen.TreeNuts] };
        var file = await With(await Draft(nuts), food.Food);

        await Revise(food, safe with { Allergens = [Allergen.Wheat, Allergen.TreeNuts] });
        await practice.Get<KeepFood>().Retire(Desk, await OnFile(food.Id), Cancel);

        var refused = await practice.Get<IssuePlan>().Run(Desk, file.Version, Cancel);
        var unsafeFoods = Assert.IsType<UnsafeFoods>(refused);
        Assert.Contains(
            unsafeFoods.Foods,
            f => f.Contains("Safe fig bar", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task An_allergen_learnt_late_tells_which_issued_plans_serve_it_to_whom_it_would_harm()
    {
        var safe = Bar("Handed-over bar") with
        {
            Allergens = [Allergen.Wheat],
            Per100G = SampleFood.Bar.Per100G with { LactoseG = null },
        };
        var food = await Kept(safe);
        foreach (var allergen in new[] { Allergen.TreeNuts, Allergen.Fish })
        {
            var diet = Diet.Unrestricted with { Allergies = [allergen] };
            var file = await With(await Draft(diet), food.Food);
            Assert.IsType<Issued>(await practice.Get<IssuePlan>().Run(Desk, file.Version, Cancel));
        }
        Assert.Empty(await practice.Get<PlansAtRisk>().Run(Desk, food.FoodId, Cancel));

        await Revise(food, safe with { Allergens = [Allergen.Wheat, Allergen.TreeNuts] });

        var risk = Assert.Single(await practice.Get<PlansAtRisk>().Run(Desk, food.FoodId, Cancel));
        Assert.Equal("allergy: tree nuts", risk.Why);
        var held = (await practice.Open(risk.VersionId)).Version.Value;
        Assert.Equal((PlanStatus.Issued, risk.Race.RaceId), (held.Status, held.RaceId));
    }

    [Fact]
    public async Task A_retired_food_is_offered_to_nobody_and_can_be_put_back()
    {
        var food = await Kept(Bar("Retired fig bar"));
        await practice.Get<KeepFood>().Retire(Desk, await OnFile(food.Id), Cancel);
        var foods = await practice.Get<Larder>().Run(Desk, Cancel);
        Assert.Empty(foods.Search("Retired fig bar"));
        Assert.Equal("Retired fig bar", foods.NameOf(food.Food.Id));

        // somebody used the name meanwhile
        await Kept(Bar("Retired fig bar"));
        Assert.IsType<FoodRefused>(
            await practice.Get<KeepFood>().PutBack(Desk, await OnFile(food.Id), Cancel)
        );
    }

    [Fact]
    public async Task Two_foods_in_use_never_share_a_name_and_a_faulty_one_is_refused_at_its_field()
    {
        await Kept(Bar("Twin bar"));
        Assert.Equal(FoodField.Name, await Refused(Bar("TWIN  bar")));
        Assert.Equal(FoodField.Allergens, await Refused(Bar("Mute bar") with { Allergens = null }));
    }

    [Fact]
    public async Task Nobodys_change_to_a_food_is_overwritten_unseen()
    {
        var food = await Kept(Bar("Contested bar"));
        var (mine, theirs) = (await OnFile(food.Id), await OnFile(food.Id));
        await practice.Get<KeepFood>().Revise(Desk, theirs, Bar("Theirs"), Cancel);

        var outcome = await practice.Get<KeepFood>().Revise(Desk, mine, Bar("Mine"), Cancel);

        Assert.Equal(
            "Theirs",
            Assert.IsType<FoodChangedElsewhere>(outcome).Theirs!.Value.Sheet.Name
        );
    }

    [Fact]
    public async Task Another_practice_sees_neither_foods_nor_measures()
    {
        await Kept(Bar("Secret bar"));
        await practice
            .Get<AddMeasure>()
            .Run(Desk, "white-rice", new("secret bowl", "secret bowls", 220), Cancel);
        var others = await practice.FoundPractice("Across the road");

        Assert.Same(FoodLibrary.Standard, await practice.Get<Larder>().Run(others, Cancel));
        var ours = await practice.Get<Larder>().Run(Desk, Cancel);
        Assert.Contains(ours.Find("white-rice")!.Serving.Measures, m => m.Name == "secret bowl");
    }

    [Fact]
    public async Task Every_change_leaves_a_line_of_audit_under_the_foods_name()
    {
        var food = await Kept(Bar("Audited bar"));
        await Revise(food, Bar("Audited bar, new recipe"));
        await practice.Get<KeepFood>().Retire(Desk, await OnFile(food.Id), Cancel);

        var log = practice.Get<AuditLog>();
        var lines = await log.Latest(Desk.PracticeId, food.Id, 10, Cancel);
        Assert.Equal(["food-retired", "food-revised", "food-added"], lines.Select(l => l.What));
        var subjects = await log.Subjects(Desk.PracticeId, lines, Cancel);
        Assert.Equal(
            new AuditSubject(SubjectKind.Food, "Audited bar, new recipe"),
            subjects[food.Id]
        );
    }

    private static FoodSheet Bar(string name) =>
        SampleFood.Bar with
        {
            Name = name,
            Serving = SampleFood.Bar.Serving with { CanBeHalved = false, Least = 1 },
        };

    private async Task<OwnFood> Kept(FoodSheet sheet)
    {
        var kept = await practice.Get<KeepFood>().Run(Desk, sheet, Cancel);
        return (await OnFile(Assert.IsType<FoodKept>(kept).Key)).Value;
    }

    private async Task<FoodField> Refused(FoodSheet sheet) =>
        Assert
            .Single(
                Assert
                    .IsType<FoodRefused>(await practice.Get<KeepFood>().Run(Desk, sheet, Cancel))
                    .Faults
            )
            .Field;

    private async Task Revise(OwnFood food, FoodSheet sheet) =>
        Assert.IsType<FoodKept>(
            await practice.Get<KeepFood>().Revise(Desk, await OnFile(food.Id), sheet, Cancel)
        );

    private async Task<OnFile<OwnFood>> OnFile(Guid id) =>
        (await practice.Get<OwnFoodStore>().Find(Desk.PracticeId, id, Cancel))!;

    private async Task<PlanFile> Draft(Diet? diet = null) =>
        await practice.NewDraft(await practice.NewRace(await practice.NewClient(diet: diet)));

    /// <summary>The draft with the food in the first morning snack.</summary>
    private async Task<PlanFile> With(PlanFile file, Food food)
    {
        var plan = file.Version.Value.Plan;
        var day = plan.Days.First(d => d.Occasions.Any(o => o.Kind == OccasionKind.MorningSnack));
        var added = plan.Add(
            day.Date,
            OccasionKind.MorningSnack,
            Portion.Of(food, MealRole.SweetBite, 1)
        );
        var saved = await practice.Get<SaveDraft>().Run(Desk, file.Version, added, Cancel);
        Assert.IsType<Saved<PlanVersion>>(saved);
        return await practice.Open(file.Version.Value.Id);
    }

    private async Task<List<SwapOption>> SwapsForSnacks(PlanFile file)
    {
        var plan = file.Version.Value.Plan;
        var swaps = new List<SwapOption>();
        foreach (var day in plan.Days)
        foreach (var occasion in day.Occasions.Where(o => o.Kind == OccasionKind.MorningSnack))
        foreach (var portion in occasion.Portions)
            swaps.AddRange(
                await practice
                    .Get<Kitchen>()
                    .Swaps(file, plan, new PortionRef(day.Date, occasion.Kind, portion.FoodId))
            );
        return swaps;
    }
}
