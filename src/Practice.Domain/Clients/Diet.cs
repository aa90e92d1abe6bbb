using System.Collections.Immutable;
using Practice.Domain.Foods;

namespace Practice.Domain.Clients;

/// <summary>Which animal foods a client eats.</summary>
public enum DietPattern
{
    /// <summary>Everything.</summary>
    Omnivore,

    /// <summary>Fish, dairy and eggs, no meat.</summary>
    Pescatarian,

    /// <summary>Dairy and eggs, no flesh.</summary>
    Vegetarian,

    /// <summary>Nothing from animals.</summary>
    Vegan,
}

/// <summary>What a client must not or will not eat, whatever the plan would like.</summary>
public sealed record Diet
{
    /// <summary>A diet without restriction.</summary>
    public static Diet Unrestricted { get; } = new();

    /// <summary>Which animal foods are eaten.</summary>
    public DietPattern Pattern { get; init; }

    /// <summary>Allergies: foods with these are never served.</summary>
    public ImmutableArray<Allergen> Allergies { get; init; } = [];

    /// <summary>Traits refused for religion or conviction, such as pork or alcohol.</summary>
    public FoodTraits Refused { get; init; }

    /// <summary>An allergy not on the list, in the client's words: needs the practitioner's own reading.</summary>
    public string? OtherAllergy { get; init; }

    /// <summary>Where the client can cook, or only buy and carry.</summary>
    public ImmutableArray<KitchenLimit> Kitchen { get; init; } = [];
}

/// <summary>What a client lacks while loading.</summary>
public enum KitchenLimit
{
    /// <summary>No hob or oven.</summary>
    NoCooker,

    /// <summary>No refrigerator.</summary>
    NoFridge,

    /// <summary>Eats out or on the road.</summary>
    Travelling,
}
