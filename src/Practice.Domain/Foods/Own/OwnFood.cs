using NodaTime;

namespace Practice.Domain.Foods.Own;

/// <summary>
/// A food of a practice's own, served like those of the library. It keeps its key whatever is changed about it: plans
/// hold their portions as they were planned, and what is learnt late about an allergen reaches every open draft.
/// </summary>
public sealed class OwnFood
{
    /// <summary>What stands for the dataset in <see cref="Food.Origin"/>.</summary>
    public const string Dataset = "The practice's own";

    private OwnFood() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>What the practice wrote down.</summary>
    public FoodSheet Sheet { get; private set; } = new();

    /// <summary>The name without accents and case: no two foods in use share it.</summary>
    public string NameKey { get; private set; } = "";

    /// <summary>When it was taken out of use; null while it is served.</summary>
    public Instant? RetiredAt { get; private set; }

    /// <summary>Key of the food in plans, tastes and trials.</summary>
    public string FoodId => $"own-{Id:N}";

    /// <summary>The food as planner, screens and papers know it.</summary>
    public Food Food => Sheet.Read(FoodId);

    /// <summary>Writes down a food.</summary>
    /// <exception cref="ArgumentException">The sheet has errors; the message tells the first.</exception>
    public static OwnFood Of(Guid practiceId, FoodSheet sheet)
    {
        var food = new OwnFood { Id = Guid.CreateVersion7(), PracticeId = practiceId };
        food.Revise(sheet);
        return food;
    }

    /// <summary>Changes what is written down; plans made before keep what they were made with.</summary>
    /// <exception cref="ArgumentException">The sheet has errors; the message tells the first.</exception>
    public void Revise(FoodSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (FoodSheetChecks.Of(sheet).FirstOrDefault(f => !f.IsWarning) is { } fault)
            throw new ArgumentException($"{fault.Field}: {fault.Text}");
        Sheet = sheet with { Name = sheet.Name.Trim(), Source = sheet.Source.Trim() };
        NameKey = KeyOf(sheet.Name);
    }

    /// <summary>Takes it out of use: no menu gets it any more, but plans and trials can still name it.</summary>
    public void Retire(Instant now) => RetiredAt ??= now;

    /// <summary>Puts it back into use.</summary>
    public void PutBack() => RetiredAt = null;

    /// <summary>A name as two foods must not share it.</summary>
    public static string KeyOf(string name) => string.Join(' ', NameWords.Of(name));
}
