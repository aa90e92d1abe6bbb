using Practice.Domain.Clients;

namespace Practice.Domain.Physiology;

/// <summary>Resting energy of adults, kcal a day. Heights in centimetres; not for under 18.</summary>
public static class RestingEnergy
{
    /// <summary>Mifflin-St Jeor 1990, from mass, height, age and sex. Checks B01, B02.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="heightCm">Height, cm.</param>
    /// <param name="ageYears">Age, years, 18 or more.</param>
    /// <param name="sex">Sex.</param>
    public static double Mifflin(double massKg, double heightCm, int ageYears, Sex sex) =>
        10 * massKg + 6.25 * heightCm - 5 * ageYears + (sex == Sex.Male ? 5 : -161);

    /// <summary>Cunningham 1980, from measured fat-free mass; preferred where it is known. Check B05.</summary>
    /// <param name="fatFreeMassKg">Fat-free mass, kg.</param>
    public static double Cunningham(double fatFreeMassKg) => 500 + 22 * fatFreeMassKg;
}
