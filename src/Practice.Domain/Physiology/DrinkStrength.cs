namespace Practice.Domain.Physiology;

/// <summary>How strong a drink is, and what is in the stomach with it. Checks T16 to T19.</summary>
public static class DrinkStrength
{
    /// <summary>Molar mass of glucose and of fructose, g/mol.</summary>
    public const double HexoseGPerMol = 180.16;

    /// <summary>Molar mass of sucrose, g/mol.</summary>
    public const double SucroseGPerMol = 342.3;

    /// <summary>Carbohydrate in fluid, % w/v: grams in 100 ml.</summary>
    /// <param name="carbohydrateG">Carbohydrate, g.</param>
    /// <param name="fluidMl">Fluid, ml, above 0.</param>
    public static double Percent(double carbohydrateG, double fluidMl) =>
        100 * carbohydrateG / fluidMl;

    /// <summary>Fluid that brings an amount to a strength, ml.</summary>
    /// <param name="carbohydrateG">Carbohydrate, g.</param>
    /// <param name="percent">Strength wanted, % w/v, above 0.</param>
    public static double FluidMl(double carbohydrateG, double percent) =>
        100 * carbohydrateG / percent;

    /// <summary>Osmolality of an ideal solution without salts, mOsm/L: an estimate only.</summary>
    /// <param name="gPerL">Concentration, g/L.</param>
    /// <param name="molarMass">Molar mass, g/mol.</param>
    public static double Osmolality(double gPerL, double molarMass) => 1000 * gPerL / molarMass;
}
