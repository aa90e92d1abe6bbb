using System.Collections.Immutable;
using Practice.Domain.Foods;
using Practice.Service.Clients;
using Practice.Web.Parts;
using Practice.Web.Parts.Notices;

namespace Practice.Web.Features.Clients.Details;

/// <summary>A client's details as lines of name and value, to lay two versions side by side.</summary>
internal static class ClientLines
{
    public static ImmutableArray<FactLine> Of(ClientDetails details, FoodLibrary foods)
    {
        var (body, diet, tastes) = (details.Physique, details.Diet, details.Tastes);
        string Figure(decimal? value, string unit) =>
            value is { } v ? $"{Say.Number(v, 1)} {unit}" : "";
        return
        [
            new("Name", $"{details.GivenName} {details.FamilyName}"),
            new("E-mail", details.Email ?? ""),
            new("Born", Say.WithYear(details.BirthDate)),
            new("Time zone", details.ZoneId ?? ""),
            new("Sex", Say.Words(body.Sex)),
            new("Height", Figure(body.HeightCm, "cm")),
            new("Body fat", Figure(body.BodyFatPercent, "%")),
            new("VO₂max", Figure(body.Vo2Max, "mL/kg/min")),
            new("Runs a week", Figure(body.WeeklyKm, "km")),
            new(
                "Recent race",
                body.RecentResult is { } race
                    ? $"{Say.Distance(race.DistanceKm)} in {Say.Span(race.Time)}"
                    : ""
            ),
            new("Eats", Say.Words(diet.Pattern)),
            new("Allergies", string.Join(", ", diet.Allergies.Select(a => Say.Words(a)))),
            new("Other allergy", diet.OtherAllergy ?? ""),
            new(
                "Refuses",
                string.Join(
                    ", ",
                    DietWords.Refusable.Where(t => diet.Refused.HasFlag(t)).Select(DietWords.Of)
                )
            ),
            new("Kitchen", string.Join(", ", diet.Kitchen.Select(DietWords.Of))),
            new("Likes", string.Join(" · ", DietWords.Names(tastes.Likes, foods))),
            new("Will not eat", string.Join(" · ", DietWords.Names(tastes.Dislikes, foods))),
            new("Sat well", string.Join(" · ", DietWords.Names(tastes.Tolerated, foods))),
            new("Suspected", string.Join(" · ", DietWords.Names(tastes.Suspect, foods))),
            new("Kitchen words", DietWords.Of(details.Units)),
            new("Notes", details.Notes),
        ];
    }
}
