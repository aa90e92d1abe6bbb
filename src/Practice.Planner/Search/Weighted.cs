namespace Practice.Planner.Search;

/// <summary>Things to draw from, each with its chance.</summary>
internal sealed class Weighted<T>
{
    private readonly T[] _things;
    private readonly double[] _upTo;

    public Weighted(IEnumerable<T> things, Func<T, double> weight)
    {
        _things = [.. things];
        _upTo = new double[_things.Length];
        var sum = 0.0;
        for (var i = 0; i < _things.Length; i++)
            _upTo[i] = sum += weight(_things[i]);
    }

    public bool IsEmpty => _things.Length == 0;

    public T Pick(Random random)
    {
        var at = Array.BinarySearch(_upTo, random.NextDouble() * _upTo[^1]);
        return _things[Math.Min(at < 0 ? ~at : at, _things.Length - 1)];
    }
}
