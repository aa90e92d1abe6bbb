using Practice.Domain.Foods;
using Practice.Domain.Foods.Shop;

namespace Practice.Domain.Tests.Foods;

public sealed class ShopShelfTests
{
    public static TheoryData<string> Known => [.. ShopShelf.Known];

    public static TheoryData<string> BoughtDry =>
        [.. ShopShelf.Known.Where(id => ShopShelf.Find(id)!.Dry is not null)];

    [Theory]
    [MemberData(nameof(Known))]
    public void A_food_that_is_sold_is_in_the_library_and_packed_by_what_its_serving_counts(
        string id
    )
    {
        var serving = Assert.IsType<Food>(FoodLibrary.Standard.Find(id)).Serving;
        var sold = ShopShelf.Find(id)!;
        Assert.NotNull(sold.Uk ?? sold.Us);
        foreach (var packing in new[] { sold.Uk, sold.Us }.OfType<Packing>())
        {
            Assert.All(packing.Sizes, size => Assert.True(size.Amount > 0));
            Assert.Equal(packing.Sizes.OrderBy(s => s.Amount), packing.Sizes);
            Assert.True(
                packing.By switch
                {
                    PackedBy.Pieces => serving.Style == ServingStyle.Counted,
                    PackedBy.Millilitres => serving.Style == ServingStyle.Poured,
                    _ => serving.Style != ServingStyle.Poured,
                },
                id
            );
        }
    }

    [Theory]
    [MemberData(nameof(BoughtDry))]
    public void The_water_of_a_dry_food_is_as_published_and_less_than_that_of_the_cooked(string id)
    {
        var dry = ShopShelf.Find(id)!.Dry!;
        Assert.Equal(PublishedRecord.Sr28[dry.Record]["water_g"], dry.WaterG);
        Assert.True(dry.WaterG < FoodLibrary.Standard.Find(id)!.Per100G.WaterG);
    }

    // derived from USDA SR28: rice 68.44 g of water in 100 g boiled and 11.62 g dry, pasta 62.13 g and 9.90 g
    [Theory]
    [InlineData("white-rice", 800, 285.7)]
    [InlineData("white-pasta", 500, 210.2)]
    public void What_is_not_water_stays_in_the_pot(string id, int cooked, double dry)
    {
        var food = FoodLibrary.Standard.Find(id)!;
        Assert.Equal(
            (decimal)dry,
            Math.Round(ShopShelf.Find(id)!.Dry!.GramsFor(cooked, food.Per100G), 1)
        );
    }

    [Theory]
    [InlineData(480, 1, "500 g")]
    [InlineData(740, 1, "1 kg")]
    [InlineData(1000, 1, "1 kg")]
    [InlineData(1200, 3, "500 g")]
    public void The_size_that_leaves_least_over_is_taken_and_of_those_the_fewest(
        int grams,
        int count,
        string said
    )
    {
        var (packs, size) = ShopShelf.Find("white-rice")!.Uk!.For(grams);
        Assert.Equal((count, said), (packs, size.Said));
    }
}
