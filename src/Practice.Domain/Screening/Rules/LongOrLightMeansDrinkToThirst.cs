using NodaTime;
using Practice.Domain.Evidence;
using Practice.Domain.Quantities;

namespace Practice.Domain.Screening.Rules;

/// <summary>
/// Low blood sodium comes from drinking more than is lost: likelier over more than four hours and below 60 kg.
/// </summary>
internal sealed class LongOrLightMeansDrinkToThirst : ScreeningRule
{
    public override Source Source => Sources.HewButler2015;

    public override bool When(ScreenedCase screened) =>
        screened.ExpectedFinish > Duration.FromHours(4)
        || screened.Client.LatestMass is not { } latest
        || latest.Mass < BodyMass.OfKilograms(60);

    public override Findings Then(ScreenedCase screened) =>
        new() { Cautions = [LowBloodSodium.DrinkToThirst, LowBloodSodium.Signs] };
}
