using Practice.Domain.Evidence;
using Practice.Domain.Physiology;

namespace Practice.Domain.Targets;

/// <summary>Body mass that loading adds, so that nobody is surprised by the scale. Checks L20, L21.</summary>
internal static class BodyMassGainTarget
{
    public static Target Of(LoadingCase loading, GlycogenForecast glycogen, int windowHours)
    {
        var gainG = glycogen.GainG(windowHours);
        var computed = (decimal)LoadingMassGain.Kg(gainG);
        var own = loading.OverrideOf(TargetKeys.BodyMassGain, computed);
        return new Target
        {
            Key = TargetKeys.BodyMassGain,
            Name = "Expected gain of body mass",
            Aim = own?.Value ?? computed,
            Low = (decimal)LoadingMassGain.Kg(gainG, LoadingMassGain.WaterPerGramLow),
            High = (decimal)LoadingMassGain.Kg(gainG, LoadingMassGain.WaterPerGramHigh),
            Unit = "kg",
            Decimals = 1,
            Override = own,
            Basis = new Basis(
                "(1 + 3 g of water, 2 to 4) × muscle glycogen gained",
                [
                    BasisInput.Of(
                        "Muscle glycogen at the start",
                        glycogen.StartMmolPerKg,
                        "mmol/kg"
                    ),
                    BasisInput.Of(
                        "At the end of the window",
                        glycogen.Expected(windowHours),
                        "mmol/kg"
                    ),
                    BasisInput.Of(
                        "Skeletal muscle",
                        100 * GlycogenStores.MuscleShare(glycogen.Sex),
                        "% of body mass",
                        1
                    ),
                    BasisInput.Of("Glycogen gained", gainG, "g"),
                    BasisInput.Of("VO2max", loading.Vo2Max.MlPerKgMin, "mL/kg/min", 1),
                ],
                [
                    Sources.LoadingKinetics,
                    Sources.Bussau2002,
                    Sources.DoseDependence,
                    Sources.MassBalance,
                    Sources.Acheson1982,
                    Sources.Areta2018,
                    Sources.Janssen2000,
                    Sources.Olsson1970,
                    Sources.FernandezElias2015,
                    Sources.Shiose2016,
                ],
                Note(loading)
            ),
        };
    }

    private static string Note(LoadingCase loading)
    {
        var vo2Max = loading.Vo2Max.Basis.Note is { } note ? $" VO2max: {note}" : "";
        var meaning = loading.Adjustments.NoWeighing
            ? "No weighing for this client: explain it in words only."
            : "Fuel and water, not fat. How much water goes with glycogen is disputed.";
        return meaning + vo2Max;
    }
}
