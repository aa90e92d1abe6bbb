namespace Practice.Domain.Quantities;

/// <summary>An adult's or adolescent's body mass in kilograms, 25 to 300.</summary>
public readonly record struct BodyMass : IComparable<BodyMass>
{
    /// <summary>The smallest mass the tool plans for, kg.</summary>
    public const decimal MinimumKg = 25m;

    /// <summary>The largest mass the tool plans for, kg.</summary>
    public const decimal MaximumKg = 300m;

    private BodyMass(decimal kilograms) => Kilograms = kilograms;

    /// <summary>Mass, kg.</summary>
    public decimal Kilograms { get; }

    /// <summary>Makes a body mass from kilograms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 25 to 300 kg.</exception>
    public static BodyMass OfKilograms(decimal kilograms) =>
        IsValid(kilograms)
            ? new BodyMass(kilograms)
            : throw new ArgumentOutOfRangeException(
                nameof(kilograms),
                kilograms,
                $"Body mass must be {MinimumKg} to {MaximumKg} kg."
            );

    /// <summary>Whether the value can be a body mass in kilograms.</summary>
    public static bool IsValid(decimal kilograms) => kilograms is >= MinimumKg and <= MaximumKg;

    /// <inheritdoc />
    public int CompareTo(BodyMass other) => Kilograms.CompareTo(other.Kilograms);

    /// <summary>Orders by mass.</summary>
    public static bool operator <(BodyMass left, BodyMass right) =>
        left.Kilograms < right.Kilograms;

    /// <summary>Orders by mass.</summary>
    public static bool operator >(BodyMass left, BodyMass right) =>
        left.Kilograms > right.Kilograms;

    /// <summary>Orders by mass.</summary>
    public static bool operator <=(BodyMass left, BodyMass right) =>
        left.Kilograms <= right.Kilograms;

    /// <summary>Orders by mass.</summary>
    public static bool operator >=(BodyMass left, BodyMass right) =>
        left.Kilograms >= right.Kilograms;
}
