using Practice.Domain.Evidence;

namespace Practice.Domain.Screening.Rules;

/// <summary>The words on low blood sodium (hyponatraemia) for those at higher risk of it.</summary>
internal static class LowBloodSodium
{
    public static Caution DrinkToThirst { get; } =
        new(
            "drink-to-thirst",
            "On race day drink when you are thirsty, and no more than that. Drinking more than you sweat can "
                + "make the sodium in the blood dangerously low, and neither salt nor sports drinks protect you from it.",
            ForClient: true,
            Sources.HewButler2015
        );

    public static Caution Signs { get; } =
        new(
            "overdrinking-signs",
            "Headache, vomiting, swelling or confusion during or after the race: stop drinking and get medical help.",
            ForClient: true,
            Sources.HewButler2015
        );
}
