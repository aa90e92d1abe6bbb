using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Course;

/// <summary>What is taken in a span that begins at a step.</summary>
/// <param name="From">When the span begins.</param>
/// <param name="Totals">What is taken in it.</param>
internal sealed record Span(Duration From, CourseTotals Totals);

/// <summary>
/// Spans of one length that begin at each step: the fullest span of a length always begins at one, so none is missed.
/// A span holds its beginning and not its end.
/// </summary>
internal static class Rolling
{
    public static ImmutableArray<Span> Of(ImmutableArray<CourseStep> steps, Duration length)
    {
        var spans = ImmutableArray.CreateBuilder<Span>();
        foreach (var from in steps.Select(s => s.Elapsed).Distinct())
            spans.Add(
                new Span(
                    from,
                    CourseTotals.Of(
                        steps.Where(s => s.Elapsed >= from && s.Elapsed < from + length)
                    )
                )
            );
        return spans.ToImmutable();
    }
}
