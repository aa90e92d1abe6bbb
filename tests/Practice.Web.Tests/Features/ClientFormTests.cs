using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Service.Clients;
using Practice.Web.Features.Clients.Details;
using Practice.Web.Parts.Notices;

namespace Practice.Web.Tests.Features;

public class ClientFormTests
{
    private static readonly ClientDetails Details = new()
    {
        GivenName = "Maren",
        FamilyName = "Holt",
        Email = "maren@example.org",
        BirthDate = new LocalDate(1989, 3, 14),
        ZoneId = "America/New_York",
        Physique = new Physique
        {
            Sex = Sex.Female,
            HeightCm = 171,
            BodyFatPercent = 19,
            Vo2Max = 52,
            WeeklyKm = 62,
            RecentResult = new RaceResult(
                21.0975m,
                Duration.FromSeconds(6060),
                new LocalDate(2026, 5, 3)
            ),
        },
        Diet = new Diet
        {
            Pattern = DietPattern.Pescatarian,
            Allergies = [Allergen.Peanuts, Allergen.TreeNuts],
            Refused = FoodTraits.Pork | FoodTraits.Alcohol,
            OtherAllergy = "kiwi",
            Kitchen = [KitchenLimit.NoFridge],
        },
        Tastes = Tastes.Unknown with { Likes = ["bagel"], Dislikes = ["banana"] },
        Units = HouseholdUnits.UsCustomary,
        Notes = "Sleeps badly before races.",
    };

    [Fact]
    public void What_is_on_file_comes_back_from_the_form_unchanged() =>
        Assert.Equal(Lines(Details), Lines(ClientForm.Of(Details).Read()));

    [Fact]
    public void The_lines_show_every_detail_that_can_be_changed()
    {
        ImmutableArray<ClientDetails> changed =
        [
            Details with
            {
                GivenName = "Mara",
            },
            Details with
            {
                Email = null,
            },
            Details with
            {
                BirthDate = new LocalDate(1990, 1, 1),
            },
            Details with
            {
                ZoneId = "Europe/London",
            },
            Details with
            {
                Physique = Details.Physique with { HeightCm = 172 },
            },
            Details with
            {
                Physique = Details.Physique with { RecentResult = null },
            },
            Details with
            {
                Diet = Details.Diet with { OtherAllergy = null },
            },
            Details with
            {
                Diet = Details.Diet with { Allergies = [] },
            },
            Details with
            {
                Tastes = Tastes.Unknown,
            },
            Details with
            {
                Units = HouseholdUnits.Metric,
            },
            Details with
            {
                Notes = "",
            },
        ];
        Assert.All(changed, c => Assert.NotEqual(Lines(Details), Lines(c)));
    }

    private static ImmutableArray<FactLine> Lines(ClientDetails details) =>
        ClientLines.Of(details, FoodLibrary.Standard);

    [Theory]
    [InlineData("1:41:00", 6060)]
    [InlineData("41:20", 2480)]
    [InlineData(" 3:05:09 ", 11109)]
    public void A_time_is_read_as_people_type_it(string typed, int seconds) =>
        Assert.Equal(Duration.FromSeconds(seconds), RaceTimeAttribute.Read(typed));

    [Theory]
    [InlineData("1:75:00")]
    [InlineData("90")]
    [InlineData("0:00")]
    [InlineData("1:2:3:4")]
    [InlineData("one hour")]
    public void What_is_no_time_is_not_guessed(string typed) =>
        Assert.Null(RaceTimeAttribute.Read(typed));
}
