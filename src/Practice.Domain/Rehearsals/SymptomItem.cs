using Practice.Domain.Evidence;

namespace Practice.Domain.Rehearsals;

/// <summary>Where in the gut a symptom belongs.</summary>
public enum SymptomCategory
{
    /// <summary>Discomfort as a whole; kept apart from the total.</summary>
    Overall,

    /// <summary>Stomach and gullet.</summary>
    Upper,

    /// <summary>Bowel.</summary>
    Lower,

    /// <summary>Nausea, dizziness, stitch.</summary>
    Other,
}

/// <summary>A symptom that is asked for. Items written from memory; to be checked against the instrument.</summary>
public enum SymptomItem
{
    /// <summary>Gut discomfort as a whole.</summary>
    GutDiscomfort,

    /// <summary>Belching.</summary>
    Belching,

    /// <summary>Heartburn.</summary>
    Heartburn,

    /// <summary>Bloating of the upper belly.</summary>
    UpperBloating,

    /// <summary>Pain of the upper belly.</summary>
    UpperPain,

    /// <summary>Urge to bring something up.</summary>
    UrgeToRegurgitate,

    /// <summary>Brought something up.</summary>
    Regurgitation,

    /// <summary>Wind.</summary>
    Flatulence,

    /// <summary>Bloating of the lower belly.</summary>
    LowerBloating,

    /// <summary>Urge to go.</summary>
    UrgeToDefecate,

    /// <summary>Pain of the lower belly.</summary>
    LowerPain,

    /// <summary>Loose stool or diarrhoea.</summary>
    AbnormalStool,

    /// <summary>Nausea.</summary>
    Nausea,

    /// <summary>Dizziness.</summary>
    Dizziness,

    /// <summary>Stitch.</summary>
    Stitch,
}

/// <summary>What is known of the symptoms.</summary>
public static class SymptomItems
{
    /// <summary>Where the items and their grouping come from.</summary>
    public static Source Source => Sources.SymptomAnchors;

    /// <summary>Where in the gut a symptom belongs.</summary>
    public static SymptomCategory Category(this SymptomItem item) =>
        item switch
        {
            SymptomItem.GutDiscomfort => SymptomCategory.Overall,
            <= SymptomItem.Regurgitation => SymptomCategory.Upper,
            <= SymptomItem.AbnormalStool => SymptomCategory.Lower,
            _ => SymptomCategory.Other,
        };

    /// <summary>The symptom in a client's words.</summary>
    public static string InWords(this SymptomItem item) =>
        item switch
        {
            SymptomItem.GutDiscomfort => "gut discomfort",
            SymptomItem.Belching => "belching",
            SymptomItem.Heartburn => "heartburn",
            SymptomItem.UpperBloating => "bloating, upper belly",
            SymptomItem.UpperPain => "pain, upper belly",
            SymptomItem.UrgeToRegurgitate => "urge to bring food up",
            SymptomItem.Regurgitation => "food came up",
            SymptomItem.Flatulence => "wind",
            SymptomItem.LowerBloating => "bloating, lower belly",
            SymptomItem.UrgeToDefecate => "urge to go",
            SymptomItem.LowerPain => "pain, lower belly",
            SymptomItem.AbnormalStool => "loose stool",
            SymptomItem.Nausea => "nausea",
            SymptomItem.Dizziness => "dizziness",
            _ => "stitch",
        };
}
