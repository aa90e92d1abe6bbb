namespace Practice.Domain.Plans.Weeks;

/// <summary>A piece of advice.</summary>
/// <param name="Words">Without any number beside a unit, so that every reader may have it.</param>
/// <param name="Figures">The same in figures, for readers who may have them; empty when there are none.</param>
public sealed record Advice(string Words, string Figures = "")
{
    /// <summary>The advice as a reader gets it.</summary>
    /// <param name="numberFree">Whether the reader gets no numbers with units.</param>
    public string For(bool numberFree) =>
        numberFree || Figures.Length == 0 ? Words : $"{Words} {Figures}";
}
