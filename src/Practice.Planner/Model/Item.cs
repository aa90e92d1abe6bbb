using Practice.Domain.Foods;

namespace Practice.Planner.Model;

/// <summary>
/// A food in one of the parts it can play, with what one step of its serving brings. The solver counts in whole
/// numbers, so everything is rounded once, here, to a hundredth of a gram (sodium: 1 mg, weight: 0.1 g).
/// </summary>
internal sealed class Item(Food food, FoodRole part)
{
    public Food Food { get; } = food;
    public MealRole Role { get; } = part.Role;
    public int Cover { get; } = part.Cover;

    public long Carbohydrate { get; } = Hundredths(food.PerStep.CarbohydrateG);
    public long Fibre { get; } = Hundredths(food.PerStep.FibreG);
    public long Fat { get; } = Hundredths(food.PerStep.FatG);
    public long Protein { get; } = Hundredths(food.PerStep.ProteinG);
    public long Fructose { get; } = Hundredths(food.PerStep.FructoseLoadG);
    public long Lactose { get; } =
        Hundredths(LactoseOf(food.Per100G, food.Group) * food.Serving.StepGrams / 100);
    public long Sodium { get; } = (long)Math.Round(food.PerStep.SodiumMg);
    public long Weight { get; } = (long)Math.Round(food.Serving.StepGrams * 10);

    public long Drunk => Food.IsLiquid ? Carbohydrate : 0;
    public long FromSugaryFood => Food.Is(FoodTraits.Sugary) ? Carbohydrate : 0;

    /// <summary>Lactose of 100 g; where it is not known, all sugars of a dairy food: the safe side.</summary>
    public static decimal LactoseOf(Nutrients per100G, FoodGroup group) =>
        per100G.LactoseG ?? (group == FoodGroup.Dairy ? per100G.SugarsG : 0);

    public override string ToString() => $"{Food.Id} as {Role}";

    private static long Hundredths(decimal grams) => (long)Math.Round(grams * 100);
}
