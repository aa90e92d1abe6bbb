using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Domain.Races;
using Practice.Domain.Screening;
using Practice.Domain.Targets;

namespace Practice.Benchmarks;

/// <summary>A made-up client's menu request, and who it is in a line.</summary>
internal sealed record GeneratedClient(int Seed, string Who, MenuRequest Request)
{
    public override string ToString() => $"#{Seed} {Who}";
}

/// <summary>
/// Made-up clients by the number: 45 to 100 kg, 8 to 12 g/kg, 24 to 60 h, diets and dislikes as a practice meets them.
/// The same number is always the same client.
/// </summary>
internal static class GeneratedClients
{
    private static readonly LocalDate Today = new(2026, 9, 1);
    private static readonly ImmutableArray<Food> Library = FoodLibrary.Standard.All;

    public static GeneratedClient Of(int seed)
    {
        var random = new Random(seed * 7919 + 13);
        var mass = Math.Round(
            45 + 55 * (decimal)(random.NextDouble() + random.NextDouble()) / 2,
            1
        );
        var rate = Math.Round(
            8 + 4 * (decimal)Math.Min(random.NextDouble(), random.NextDouble()),
            1
        );
        var choices = new LoadingChoices
        {
            CarbohydrateGPerKg = rate,
            WindowHours = Pick(random, 36, 36, 48, 60),
            OccasionsPerDay = Pick(random, 5, 6, 6, 6, 7),
        };
        var diet = new Diet
        {
            Pattern = Pick(
                random,
                DietPattern.Omnivore,
                DietPattern.Omnivore,
                DietPattern.Omnivore,
                DietPattern.Vegetarian,
                DietPattern.Vegan
            ),
            Allergies = random.NextDouble() < 0.08 ? [Allergen.Peanuts, Allergen.TreeNuts] : [],
        };
        var isCoeliac = random.NextDouble() < 0.15;
        var avoidsLactose = random.NextDouble() < 0.2;
        var tastes = TastesOf(random);
        var style = random.NextDouble() < 0.3 ? MenuStyle.Repeat : MenuStyle.Vary;

        var request = Request(
            mass,
            choices,
            diet,
            Adjusted(isCoeliac, avoidsLactose),
            tastes,
            style,
            seed
        );
        var who = string.Create(
            CultureInfo.InvariantCulture,
            $"{mass} kg x {rate} g/kg, {choices.WindowHours} h, {choices.OccasionsPerDay} sittings, {diet.Pattern}{(isCoeliac ? ", coeliac" : "")}{(avoidsLactose ? ", little lactose" : "")}, {tastes.Dislikes.Count} dislikes, {style}"
        );
        return new GeneratedClient(seed, who, request);
    }

    /// <summary>What screening would change for these two conditions.</summary>
    public static Adjustments Adjusted(bool isCoeliac, bool avoidsLactose) =>
        Adjustments.None with
        {
            ExcludedAllergens = isCoeliac ? [Allergen.Wheat, Allergen.Barley, Allergen.Rye] : [],
            ExcludedTraits = isCoeliac ? FoodTraits.UncertifiedOats : FoodTraits.None,
            LactoseMaxPerOccasionG = avoidsLactose ? 12 : null,
            LactoseMaxPerDayG = avoidsLactose ? 24 : null,
        };

    /// <summary>A request for a made-up client with these facts.</summary>
    public static MenuRequest Request(
        decimal massKg,
        LoadingChoices choices,
        Diet? diet = null,
        Adjustments? adjustments = null,
        Tastes? tastes = null,
        MenuStyle style = MenuStyle.Vary,
        int seed = 1
    )
    {
        var mass = BodyMass.OfKilograms(massKg);
        var client = Client.Register(
            Guid.Empty,
            "Sample",
            $"Client {seed}",
            new LocalDate(1990, 5, 1),
            new Physique { Sex = Sex.Female, HeightCm = 172 },
            new BodyMassEntry(Today, mass)
        );
        var race = Race.Enter(
            Guid.Empty,
            client.Id,
            new RaceDetails
            {
                Name = "Sample marathon",
                DistanceKm = 42.195m,
                Start = new LocalDateTime(2026, 10, 4, 9, 0),
                ZoneId = "Europe/London",
                GoalTime = Duration.FromMinutes(230),
            }
        );
        var changes = adjustments ?? Adjustments.None;
        var screening = new ScreeningOutcome([], [], changes);
        var targets = LoadingTargets.For(client, race, screening, choices, Today);
        return new MenuRequest
        {
            BodyMass = mass,
            Days = LoadingLayout.Days(race.Start, mass, choices, targets, changes),
            Foods = EligibleFoods
                .For(
                    FoodLibrary.Standard,
                    diet ?? Diet.Unrestricted,
                    tastes ?? Tastes.Unknown,
                    changes
                )
                .Allowed,
            Tastes = tastes ?? Tastes.Unknown,
            Style = style,
            Seed = seed,
        };
    }

    private static Tastes TastesOf(Random random)
    {
        var dislikes = Some(random, 3, 12);
        var suspect = Some(random, 0, 4).Except(dislikes);
        return new Tastes
        {
            Dislikes = dislikes,
            Suspect = suspect,
            Tolerated = Some(random, 5, 15).Except(dislikes).Except(suspect),
            Likes = Some(random, 5, 15).Except(dislikes).Except(suspect),
        };
    }

    private static ImmutableHashSet<string> Some(Random random, int least, int most) =>
        [
            .. Enumerable
                .Range(0, random.Next(least, most + 1))
                .Select(_ => Library[random.Next(Library.Length)].Id),
        ];

    private static T Pick<T>(Random random, params ReadOnlySpan<T> choices) =>
        choices[random.Next(choices.Length)];
}
