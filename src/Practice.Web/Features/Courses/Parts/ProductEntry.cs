using System.ComponentModel.DataAnnotations;
using Practice.Domain.Course;
using Practice.Domain.Foods;

namespace Practice.Web.Features.Courses.Parts;

/// <summary>A product as typed from its label.</summary>
internal sealed class ProductEntry
{
    [Required(ErrorMessage = "Give it a name.")]
    [StringLength(60, ErrorMessage = "60 letters at most.")]
    public string Name { get; set; } = "";

    public ProductKind Kind { get; set; }

    [Range(0.0, 500.0, ErrorMessage = "0 to 500 g.")]
    public decimal? ServingG { get; set; }

    [Range(10.0, 2000.0, ErrorMessage = "10 to 2000 ml.")]
    public decimal? ServingMl { get; set; }

    [Range(0.0, 200.0, ErrorMessage = "0 to 200 g.")]
    public decimal? GlucoseG { get; set; }

    [Range(0.0, 200.0, ErrorMessage = "0 to 200 g.")]
    public decimal? FructoseG { get; set; }

    [Range(0.0, 200.0, ErrorMessage = "0 to 200 g.")]
    public decimal? SucroseG { get; set; }

    [Range(0.0, 2000.0, ErrorMessage = "0 to 2000 mg.")]
    public decimal? SodiumMg { get; set; }

    [Range(0.0, 300.0, ErrorMessage = "0 to 300 mg.")]
    public decimal? CaffeineMg { get; set; }

    [Range(0.0, 500.0, ErrorMessage = "0 to 500 ml.")]
    public decimal? WaterNeedMl { get; set; }

    [Range(0, 60, ErrorMessage = "0 to 60.")]
    public int? CarryLimit { get; set; }

    public bool Refills { get; set; }

    public bool LabelRead { get; set; }

    public HashSet<Allergen> Allergens { get; private init; } = [];

    public bool IsDrink => Kind is ProductKind.Water or ProductKind.Drink;

    public static ProductEntry Of(Product product) =>
        new()
        {
            Name = product.Name,
            Kind = product.Kind,
            ServingG = product.ServingG,
            ServingMl = product.ServingMl ?? 150,
            GlucoseG = product.GlucoseG,
            FructoseG = product.FructoseG,
            SodiumMg = product.SodiumMg,
            CaffeineMg = product.CaffeineMg,
            WaterNeedMl = product.WaterNeedMl,
            CarryLimit = product.CarryLimit,
            Refills = product.RefillsAtStations,
            LabelRead = product.Allergens is not null,
            Allergens = [.. product.Allergens ?? []],
        };

    public void Set(Allergen allergen, bool holds)
    {
        if (holds)
            Allergens.Add(allergen);
        else
            Allergens.Remove(allergen);
    }

    /// <summary>The product, once the form is valid: table sugar is half glucose and half fructose.</summary>
    public Product Read(Product old)
    {
        var sucrose = SucroseG ?? 0;
        var glucose = (GlucoseG ?? 0) + sucrose / 2;
        var fructose = (FructoseG ?? 0) + sucrose / 2;
        return old with
        {
            Name = Name.Trim(),
            Kind = Kind,
            ServingG = IsDrink ? 0 : ServingG ?? 0,
            ServingMl = IsDrink ? ServingMl ?? 150 : null,
            GlucoseG = glucose,
            FructoseG = fructose,
            CarbohydrateG = glucose + fructose,
            SodiumMg = SodiumMg ?? 0,
            CaffeineMg = CaffeineMg ?? 0,
            WaterNeedMl = WaterNeedMl ?? 0,
            CarryLimit = CarryLimit ?? 0,
            RefillsAtStations = Refills,
            HasSucrose = old.HasSucrose || sucrose > 0,
            Allergens = LabelRead ? [.. Allergens.Order()] : null,
        };
    }
}
