namespace Practice.Domain.Physiology;

/// <summary>
/// Carbohydrate of the meal before the start: 1 g/kg for each hour that is left, 1 to 4. Common practice: a simple form
/// of the guideline's 1-4 g/kg in the 1-4 h before (Thomas 2016). Checks T06, T07.
/// </summary>
public static class PreRaceMeal
{
    /// <summary>Carbohydrate, g.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="hoursBefore">Hours from the meal to the start; held within 1 to 4.</param>
    public static decimal CarbohydrateG(decimal massKg, decimal hoursBefore) =>
        massKg * Math.Clamp(hoursBefore, 1, 4);
}
