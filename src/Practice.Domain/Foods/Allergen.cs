namespace Practice.Domain.Foods;

/// <summary>
/// The fourteen groups of Annex II of Regulation (EU) 1169/2011, gluten cereals split because wheat allergy and
/// coeliac disease exclude different ones.
/// </summary>
public enum Allergen
{
    /// <summary>Wheat, spelt and khorasan wheat.</summary>
    Wheat,

    /// <summary>Barley, with malt made of it.</summary>
    Barley,

    /// <summary>Rye.</summary>
    Rye,

    /// <summary>Oats.</summary>
    Oats,

    /// <summary>Crustaceans.</summary>
    Crustaceans,

    /// <summary>Eggs.</summary>
    Eggs,

    /// <summary>Fish.</summary>
    Fish,

    /// <summary>Peanuts.</summary>
    Peanuts,

    /// <summary>Soybeans.</summary>
    Soya,

    /// <summary>Milk, lactose included.</summary>
    Milk,

    /// <summary>Tree nuts.</summary>
    TreeNuts,

    /// <summary>Celery.</summary>
    Celery,

    /// <summary>Mustard.</summary>
    Mustard,

    /// <summary>Sesame.</summary>
    Sesame,

    /// <summary>Sulphur dioxide and sulphites above 10 mg/kg.</summary>
    Sulphites,

    /// <summary>Lupin.</summary>
    Lupin,

    /// <summary>Molluscs.</summary>
    Molluscs,
}
