using Practice.Domain.Foods;

namespace Practice.Domain.Tests.Foods;

public sealed class FoodLibraryTests
{
    private static readonly FoodLibrary Library = FoodLibrary.Standard;

    [Fact]
    public void The_standard_library_has_plenty_of_foods() =>
        Assert.True(Library.All.Length >= 400, $"{Library.All.Length} foods");

    [Fact]
    public void A_food_is_found_by_its_id()
    {
        Assert.Equal("White rice, boiled", Library.Find("white-rice")?.Name);
        Assert.Null(Library.Find("no-such-food"));
    }

    [Theory]
    [InlineData("rice boil", "white-rice")]
    [InlineData("BOILED white", "white-rice")]
    [InlineData("puree apple", "apple-compote")]
    [InlineData("zucchini", "courgette")]
    [InlineData("yogurt fruit", "yoghurt-fruit")]
    public void Search_finds_words_in_any_order_case_and_accent(string typed, string id) =>
        Assert.Contains(Library.Search(typed), food => food.Id == id);

    [Theory]
    [InlineData("Smørbrød", "smorb")]
    [InlineData("Crème brûlée", "brulee creme")]
    [InlineData("Weißbrot", "WEISS")]
    [InlineData("Jalapeño", "jalapen")]
    public void A_name_is_found_by_what_a_keyboard_has(string name, string typed) =>
        Assert.True(NameWords.Find(name, typed));

    [Fact]
    public void A_name_is_not_found_by_the_middle_of_its_words() =>
        Assert.False(NameWords.Find("Buttermilk", "milk"));

    [Fact]
    public void Search_puts_names_that_begin_with_the_word_first() =>
        Assert.StartsWith("Banana", Library.Search("banana")[0].Name, StringComparison.Ordinal);

    [Fact]
    public void Nothing_typed_finds_everything() =>
        Assert.Equal(Library.All.Length, Library.Search(" ").Length);

    [Fact]
    public void A_word_that_no_name_has_finds_nothing() =>
        Assert.Empty(Library.Search("rice xyzzy"));

    [Fact]
    public void Two_foods_cannot_share_an_id()
    {
        var rice = Library.Find("white-rice")!;
        var fault = Assert.Throws<InvalidDataException>(() => new FoodLibrary([rice, rice]));
        Assert.Equal("Food 'white-rice', field 'id': used twice.", fault.Message);
    }
}
