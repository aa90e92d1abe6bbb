namespace Practice.Domain.Physiology;

/// <summary>
/// Body mass gained with glycogen and the water stored beside it: (1 + h) x glycogen. h is 3 g/g (2 to 4): Olsson and
/// Saltin 1970 say 3-4, Fernández-Elías 2015 at least 3, Shiose 2016 about 2. The water is no private reserve in the
/// race. Checks L20, L21.
/// </summary>
public static class LoadingMassGain
{
    /// <summary>Water with a gram of glycogen, g/g.</summary>
    public const double WaterPerGram = 3;

    /// <summary>Lower end, g/g.</summary>
    public const double WaterPerGramLow = 2;

    /// <summary>Upper end, g/g.</summary>
    public const double WaterPerGramHigh = 4;

    /// <summary>Gain, kg.</summary>
    /// <param name="glycogenG">Glycogen gained, g.</param>
    /// <param name="waterPerGram">Water with each gram, g.</param>
    public static double Kg(double glycogenG, double waterPerGram = WaterPerGram) =>
        (1 + waterPerGram) * glycogenG / 1000;
}
