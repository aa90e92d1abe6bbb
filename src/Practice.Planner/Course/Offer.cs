using NodaTime;
using Practice.Domain.Course;

namespace Practice.Planner.Course;

/// <summary>Something that could be taken somewhere: a gel from the belt at a time, a cup at a station.</summary>
/// <param name="Product">What.</param>
/// <param name="Minute">When it is passed, min since the start.</param>
/// <param name="Km">Where.</param>
/// <param name="Station">Who hands it out; null for what is carried.</param>
/// <param name="Most">How many at most.</param>
internal sealed record Offer(
    Product Product,
    double Minute,
    decimal Km,
    AidStation? Station,
    int Most
)
{
    // hundredths of a gram, rounded up: a ceiling kept here is kept in the reading
    private const int PerGram = 100;

    /// <summary>What one of it brings.</summary>
    public CourseStep One { get; } = Serving.Of(Product, 1, Station?.CupMl);

    public long Carbohydrate => Up(One.CarbohydrateG * PerGram);
    public long Glucose => Up(One.GlucoseG * PerGram);
    public long Fructose => Up(One.FructoseG * PerGram);
    public long Ml => Up(One.Ml);
    public long FoodG => Up(One.FoodG);
    public long SodiumMg => (long)Math.Round(One.SodiumMg);
    public long CaffeineMg => Up(One.CaffeineMg);

    public bool IsFeed => One.CarbohydrateG > 0;
    public bool IsEaten => !Product.IsDrink;
    public bool IsWater => Product.Id == Product.WaterId;

    /// <summary>A step that takes some of it.</summary>
    public CourseStep Take(int count, int id) =>
        Serving.Of(Product, count, Station?.CupMl) with
        {
            Id = id,
            Km = Km,
            Elapsed = Duration.FromMinutes(Minute),
            Station = Station is null ? null : CourseEdits.NameOf(Station),
        };

    /// <summary>Grams in the unit of the sugars above.</summary>
    public static long Hundredths(decimal grams) => (long)Math.Floor(grams * PerGram);

    private static long Up(decimal value) => (long)Math.Ceiling(value);
}
