using System.Collections.Frozen;
using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;
using Practice.Domain.Quantities;
using Practice.Domain.Tables;

namespace Practice.Service.Clients;

/// <summary>A client as a table tells of her.</summary>
/// <param name="Details">What a form would say.</param>
/// <param name="MassKg">Body mass, kg; null where it could not be read.</param>
public sealed record ClientOfTable(ClientDetails Details, decimal? MassKg);

/// <summary>What a table of clients can say, column by column, and how a row of it is read.</summary>
public static class ClientColumns
{
    internal const string Family = "FamilyName";
    private const string Given = "GivenName";
    private const string Born = "Born";
    private const string SexKey = "Sex";
    private const string Height = "Height";
    private const string Mass = "BodyMass";
    private const string Email = "Email";
    private const string Pattern = "Eats";
    private const string Allergies = "Allergies";
    private const string OtherAllergy = "OtherAllergy";
    private const string Weekly = "WeeklyKm";
    private const string Fat = "BodyFat";
    private const string Oxygen = "Vo2Max";
    private const string Units = "KitchenWords";
    private const string Notes = "Notes";

    /// <summary>All columns, those that are needed first.</summary>
    public static ImmutableArray<ImportColumn> All { get; } =
    [
        Column(
            Given,
            "Given name",
            true,
            "Her name.",
            "Mara",
            "first name",
            "forename",
            "firstname"
        ),
        Column(
            Family,
            "Family name",
            true,
            "Her family's name.",
            "Example",
            "last name",
            "surname",
            "lastname"
        ),
        Column(
            Born,
            "Born",
            true,
            "Such as 1990-05-04.",
            "1990-05-04",
            "birth date",
            "date of birth",
            "dob",
            "birthday",
            "birthdate"
        ),
        Column(SexKey, "Sex", true, "female or male, as the formulas use it.", "female", "gender"),
        Column(Height, "Height, cm", true, "In centimetres.", "170", "height"),
        Column(
            Mass,
            "Body mass, kg",
            true,
            "In kilograms.",
            "62",
            "weight",
            "mass",
            "body weight",
            "weight kg"
        ),
        Column(
            Email,
            "E-mail",
            false,
            "Where letters go.",
            "mara@example.org",
            "email",
            "mail",
            "e mail address",
            "email address"
        ),
        Column(
            Pattern,
            "Eats",
            false,
            "everything, pescatarian, vegetarian or vegan.",
            "everything",
            "diet",
            "diet pattern"
        ),
        Column(
            Allergies,
            "Allergies",
            false,
            "Of the 14, such as wheat, milk, tree nuts; others under Other allergy; empty where none is known.",
            "",
            "allergens",
            "allergy"
        ),
        Column(
            OtherAllergy,
            "Other allergy",
            false,
            "An allergy not among the 14: raises a hold.",
            ""
        ),
        Column(
            Weekly,
            "Runs a week, km",
            false,
            "In kilometres.",
            "50",
            "weekly km",
            "weekly distance",
            "km per week"
        ),
        Column(Fat, "Body fat, %", false, "Only if measured.", "", "body fat", "fat percent"),
        Column(Oxygen, "VO2max", false, "In mL/kg/min, only if measured.", "", "vo2 max"),
        Column(Units, "Kitchen words", false, "grams or cups.", "grams", "units"),
        Column(Notes, "Notes", false, "For the practice only.", "", "note", "comments", "remarks"),
    ];

    private static readonly FrozenDictionary<string, Sex> Sexes = Words(
        ("female", Sex.Female),
        ("f", Sex.Female),
        ("woman", Sex.Female),
        ("male", Sex.Male),
        ("m", Sex.Male),
        ("man", Sex.Male)
    );

    private static readonly FrozenDictionary<string, DietPattern> Patterns = Words(
        ("everything", DietPattern.Omnivore),
        ("omnivore", DietPattern.Omnivore),
        ("pescatarian", DietPattern.Pescatarian),
        ("vegetarian", DietPattern.Vegetarian),
        ("vegan", DietPattern.Vegan)
    );

    private static readonly FrozenDictionary<string, HouseholdUnits> Kitchens = Words(
        ("grams", HouseholdUnits.Metric),
        ("metric", HouseholdUnits.Metric),
        ("cups", HouseholdUnits.UsCustomary),
        ("us", HouseholdUnits.UsCustomary)
    );

    /// <summary>Reads a row. Its faults stay with the reader; of a row without errors a client can be registered.</summary>
    internal static ClientOfTable Read(RowReader row, LocalDate today, HouseholdUnits usual)
    {
        var details = new ClientDetails
        {
            GivenName = row.Needed(Given),
            FamilyName = row.Needed(Family),
            Email = row.Text(Email),
            BirthDate = BirthDate(row, today),
            Physique = Physique(row),
            Diet = new Diet
            {
                Pattern = row.One(Pattern, Patterns) ?? DietPattern.Omnivore,
                Allergies = AllergiesOf(row),
                OtherAllergy = row.Text(OtherAllergy),
            },
            Units = row.One(Units, Kitchens) ?? usual,
            Notes = row.Text(Notes) ?? "",
        };
        if (details.Email is { } address && !address.Contains('@', StringComparison.Ordinal))
            row.Fault(Email, "That is not an e-mail address.");
        Keep(row, Given, details.GivenName, 100);
        Keep(row, Family, details.FamilyName, 100);
        Keep(row, Email, details.Email, 254);
        Keep(row, OtherAllergy, details.Diet.OtherAllergy, 500, ofLines: true);
        Keep(row, Notes, details.Notes, 10_000, ofLines: true);
        return new ClientOfTable(details, MassOf(row));
    }

    /// <summary>What two clients do not share: name and day of birth.</summary>
    internal static string KeyOf(string givenName, string familyName, LocalDate born) =>
        $"{RowReader.Key(givenName)}|{RowReader.Key(familyName)}|{born:uuuu-MM-dd}";

    private static LocalDate BirthDate(RowReader row, LocalDate today)
    {
        if (row.Text(Born) is null)
            row.Fault(Born, "Empty: this is needed.");
        if (row.Day(Born) is not { } born)
            return default;
        if (born > today)
            row.Fault(Born, "That day lies ahead.");
        else if (born < today.PlusYears(-120))
            row.Fault(Born, "That is more than 120 years ago.");
        return born;
    }

    // each figure is asked by itself, so that what is wrong is told at its column
    private static Physique Physique(RowReader row)
    {
        if (row.Text(SexKey) is null)
            row.Fault(SexKey, "Empty: the formulas differ, female or male.");
        var least = new Physique { Sex = row.One(SexKey, Sexes) ?? default, HeightCm = 170 };
        return least with
        {
            HeightCm =
                Figure(row, Height, isNeeded: true, h => least with { HeightCm = h })
                ?? least.HeightCm,
            BodyFatPercent = Figure(row, Fat, false, f => least with { BodyFatPercent = f }),
            Vo2Max = Figure(row, Oxygen, false, o => least with { Vo2Max = o }),
            WeeklyKm = Figure(row, Weekly, false, km => least with { WeeklyKm = km }),
        };
    }

    private static decimal? Figure(
        RowReader row,
        string key,
        bool isNeeded,
        Func<decimal, Physique> with
    )
    {
        if (isNeeded && row.Text(key) is null)
            row.Fault(key, "Empty: this is needed.");
        if (row.Number(key) is not { } figure)
            return null;
        try
        {
            with(figure).Check();
            return figure;
        }
        catch (ArgumentException refused)
        {
            row.Fault(key, refused.Message);
            return null;
        }
    }

    private static decimal? MassOf(RowReader row)
    {
        if (row.Text(Mass) is null)
            row.Fault(Mass, "Empty: every target is computed from it.");
        if (row.Number(Mass) is not { } kilograms)
            return null;
        if (!BodyMass.IsValid(kilograms))
            row.Fault(
                Mass,
                $"Between {BodyMass.MinimumKg:0} and {BodyMass.MaximumKg:0} kg, in kilograms."
            );
        return kilograms;
    }

    // a word that is not on the list is never dropped: it may be what she must not eat
    private static ImmutableArray<Allergen> AllergiesOf(RowReader row) =>
        RowReader.Key(row.Text(Allergies) ?? "") is "" or "none" or "no" or "nil"
            ? []
            : row.Several(Allergies, FoodTableWords.Allergens) ?? [];

    private static void Keep(
        RowReader row,
        string key,
        string? text,
        int most,
        bool ofLines = false
    )
    {
        if (TypedText.Problem(text, most, ofLines) is { } problem)
            row.Fault(key, problem);
    }

    private static FrozenDictionary<string, T> Words<T>(params (string Word, T Value)[] words) =>
        words.ToFrozenDictionary(w => w.Word, w => w.Value);

    private static ImportColumn Column(
        string key,
        string name,
        bool isNeeded,
        string says,
        string example,
        params ReadOnlySpan<string> alsoCalled
    ) => new(key, name, isNeeded, says, example) { AlsoCalled = [.. alsoCalled] };
}
