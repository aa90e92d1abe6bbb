namespace Practice.Planner.Search;

/// <summary>Told how far a search has come.</summary>
/// <param name="done">0 to 1.</param>
/// <param name="better">A better menu than any before; null when there is none.</param>
internal delegate void OnStep(double done, long[]? better);
