using System.Collections.Immutable;
using Practice.Domain.Physiology;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Domain.Plans.Weeks;

/// <summary>
/// The words of the race week. Common practice, no source, where none is named; screening changes them. Words hold no
/// number beside a unit; figures follow where the reader may have them.
/// </summary>
internal static class WeekAdvice
{
    public static ImmutableArray<Advice> PointersOf(
        WeekDayKind kind,
        int daysBefore,
        Adjustments adjustments
    ) =>
        kind switch
        {
            WeekDayKind.Ordinary => [.. Ordinary(daysBefore)],
            WeekDayKind.LowFibre => [.. LowFibre(adjustments)],
            WeekDayKind.Loading =>
            [
                new("Eat what the plan says, in its order: more early, less in the evening."),
                new("Rest, or move easily for half an hour at most."),
                .. LowFibre(adjustments).Take(1),
            ],
            WeekDayKind.Eve =>
            [
                new("Eat what the plan says. The last large meal is early in the evening."),
                new("Collect your number, lay out your kit, pin, pack, and then put your feet up."),
                new("No alcohol, nothing new, nothing rich or very salty late in the evening."),
            ],
            WeekDayKind.RaceDay =>
            [
                new("Race morning, course and recovery have pages of their own."),
            ],
            _ =>
            [
                new(
                    "Back to ordinary food, wholegrain, fruit and vegetables, as appetite comes back."
                ),
                new(
                    "Walk a little. Write down what you took and how it sat while you still know it."
                ),
                new(
                    "Headache, vomiting, swelling or confusion in the day after a race: drink no more, and get medical help."
                ),
            ],
        };

    private static IEnumerable<Advice> Ordinary(int daysBefore) =>
        daysBefore switch
        {
            7 =>
            [
                new(
                    "Eat as usual, with something starchy at each meal. Nothing is gained by going without."
                ),
                new("Read the plan through and buy what keeps: drinks, gels, rice, pasta, jam."),
            ],
            6 => [new("Eat as usual. Training gets shorter; do not eat less for it.")],
            5 =>
            [
                new("Eat as usual, fruit and vegetables included: there is time for fibre yet."),
                new("Test what you carry: belt, bottles, where each gel goes."),
            ],
            4 =>
            [
                new("Eat as usual. If a meal is planned away from home, look at its menu today."),
            ],
            _ => [new("Eat as usual. Buy what is fresh; prepare what can be prepared.")],
        };

    private static IEnumerable<Advice> LowFibre(Adjustments adjustments) =>
        adjustments.NoLowResidue
            ? [new("Keep the fibre your care team gave you.")]
            :
            [
                new(
                    "From today soft and low in fibre: white bread, white rice, pasta, peeled potatoes, ripe bananas; "
                        + "leave wholegrain, pulses, large salads, nuts and seeds."
                ),
                new("Go easy on rich sauces, and have no alcohol."),
            ];

    public static ImmutableArray<Advice> Morning(BodyMass mass, Adjustments adjustments) =>
        [
            new(
                "Eat what you rehearsed, slowly, sitting down. If nerves close your stomach, drink part of it."
            ),
            adjustments.ThirstOnly
                ? new("Drink when you are thirsty, and not to a schedule.")
                : new(
                    "Drink with breakfast, and only sip in the last hour. Dark or no urine two hours before: one more glass.",
                    $"About {Rounding.Shown(PreRaceFluid.LowMl(mass.Kilograms), 0)} to "
                        + $"{Rounding.Shown(PreRaceFluid.HighMl(mass.Kilograms), 0)} ml with breakfast."
                ),
            new(
                "If sugar before a start has ever made you shaky, leave concentrated sugar out between an hour and half an hour before; the last minutes are fine."
            ),
            new("Toilet early, then once more. Nothing that you have not tried."),
        ];

    public static ImmutableArray<Advice> Recovery(BodyMass mass, Adjustments adjustments) =>
        [
            new(
                "Start with something small as soon as you can keep it down; a meal when appetite is back. Only who trains again within a day is in a hurry.",
                $"1.0 to 1.2 g of carbohydrate per kilogram in each of the first four hours: "
                    + $"{Rounding.Shown(Weeks.Recovery.CarbohydrateG(mass.Kilograms, 1.0m), 0)} to "
                    + $"{Rounding.Shown(Weeks.Recovery.CarbohydrateG(mass.Kilograms, 1.2m), 0)} g."
            ),
            new(
                "Something with protein at each sitting: milk, yoghurt, egg, fish, meat, or soya.",
                $"{Rounding.Shown(0.25m * mass.Kilograms, 0)} to {Rounding.Shown(0.40m * mass.Kilograms, 0)} g each time."
            ),
            new(
                "Drink to thirst with salty food. Do not force water: drinking more than you lost is dangerous for hours after the finish."
            ),
            new(
                "Headache, vomiting, swelling or confusion: stop drinking and get medical help at once."
            ),
        ];

    public static ImmutableArray<Advice> Fluids(Adjustments adjustments) =>
        [
            new(PlanAdvice.Fluids(adjustments).Drinking),
            .. PlanAdvice.Fluids(adjustments).Salting is { } salting
                ? (IEnumerable<Advice>)[new(salting)]
                : [],
        ];

    public static ImmutableArray<Advice> Caffeine(Adjustments adjustments, bool isAdult) =>
        !isAdult || adjustments.NoRaceCaffeine || adjustments.CaffeineMaxMgPerDay is 0
            ? [new("This plan brings no caffeine. Do not add any.")]
            :
            [
                new(
                    "Keep your coffee or tea as it is all week: going without gains nothing and costs a headache."
                ),
                new(
                    "Caffeine for the race only if you rehearsed it: a usual dose about an hour before the start, another past the half.",
                    $"No more than {Rounding.Shown(Math.Min(adjustments.CaffeineMaxMgPerIntake ?? 200, 200), 0)} mg at once and "
                        + $"{Rounding.Shown(Math.Min(adjustments.CaffeineMaxMgPerDay ?? 400, 400), 0)} mg in the day, coffee and tea included."
                ),
                new("None after noon on the eve."),
            ];

    public static ImmutableArray<Advice> Sleep { get; } =
    [
        new("The nights before the last one count most: go to bed early from three nights out."),
        new("A poor night before the race is usual and harms little."),
    ];

    public static ImmutableArray<string> DoNotTry { get; } =
    [
        "New foods, new gels, new drinks, new cooking",
        "A new shoe, belt or bottle",
        "Supplements, painkillers or tablets you did not rehearse; painkillers of the ibuprofen kind before or during a race harm kidneys and gut",
        "Going without carbohydrate first, fasting, saunas, drinking litres of water",
        "A long walk around town on the eve",
    ];
}
