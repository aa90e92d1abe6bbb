using NodaTime;
using Practice.Domain.Foods;
using Practice.Web.Parts;

namespace Practice.Web.Tests.Parts;

public class SayTests
{
    [Theory]
    [InlineData(0, "Today")]
    [InlineData(1, "Tomorrow")]
    [InlineData(12, "in 12 days")]
    [InlineData(-1, "Yesterday")]
    [InlineData(-3, "3 days ago")]
    public void Days_away_are_said_as_people_do(int days, string words) =>
        Assert.Equal(words, Say.DaysAway(days));

    [Theory]
    [InlineData(Allergen.TreeNuts, "Tree nuts")]
    [InlineData(Allergen.Milk, "Milk")]
    public void A_name_of_the_trade_is_its_words(Allergen name, string words) =>
        Assert.Equal(words, Say.Words(name));

    [Fact]
    public void Distances_and_times_are_the_same_on_every_machine()
    {
        Assert.Equal("42.2\u00A0km", Say.Distance(42.195m));
        Assert.Equal("50\u00A0km", Say.Distance(50));
        Assert.Equal("3 h 05 min", Say.Span(Duration.FromMinutes(185)));
        Assert.Equal("Sun 4 Oct, 09:30", Say.Moment(new LocalDateTime(2026, 10, 4, 9, 30)));
    }

    [Fact]
    public void Every_sitting_has_a_name() =>
        Assert.Distinct(Enum.GetValues<OccasionKind>().Select(Say.Name));
}
