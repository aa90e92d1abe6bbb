using System.Collections.Immutable;
using NodaTime;

namespace Practice.Domain.Course;

/// <summary>Changes to the steps by hand. What was put somewhere by hand is locked: the planner leaves it there.</summary>
public static class CourseEdits
{
    /// <summary>
    /// Moves a step. What stations hand out goes to the nearest station that has it; what is carried goes to the nearest
    /// hundred metres.
    /// </summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="stepId">Which step.</param>
    /// <param name="km">Where to, km.</param>
    public static CourseSheet Move(CourseSheet sheet, int stepId, decimal km) =>
        Change(
            sheet,
            stepId,
            step =>
                step.Station is null
                    ? step with
                    {
                        Km = Math.Clamp(Math.Round(km, 1), 0, sheet.Profile.DistanceKm),
                        Locked = true,
                    }
                    : ToStation(sheet, step, km)
        );

    /// <summary>More or fewer servings; none takes the step out.</summary>
    public static CourseSheet Count(CourseSheet sheet, int stepId, int count)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (count <= 0)
            return Remove(sheet, stepId);
        return Change(
            sheet,
            stepId,
            step =>
                sheet.Find(step.ProductId) is { } product
                    ? Serving.Of(product, count, CupOf(sheet, step)) with
                    {
                        Id = step.Id,
                        Km = step.Km,
                        Elapsed = step.Elapsed,
                        Station = step.Station,
                        Locked = true,
                    }
                    : step
        );
    }

    /// <summary>Takes a step out.</summary>
    public static CourseSheet Remove(CourseSheet sheet, int stepId)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet with { Steps = [.. sheet.Steps.Where(s => s.Id != stepId)] };
    }

    /// <summary>Locks or frees a step.</summary>
    public static CourseSheet Lock(CourseSheet sheet, int stepId, bool locked) =>
        Change(sheet, stepId, step => step with { Locked = locked });

    /// <summary>Puts a product somewhere: at the nearest station that has it, else where it is asked for, carried.</summary>
    /// <exception cref="ArgumentException">The product is not known, or nobody hands it out and it is not carried.</exception>
    public static CourseSheet Add(CourseSheet sheet, string productId, decimal km)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var product =
            sheet.Find(productId)
            ?? throw new ArgumentException($"No product '{productId}'.", nameof(productId));
        var station = product.IsCarried ? null : Nearest(sheet, productId, km);
        if (!product.IsCarried && station is null)
            throw new ArgumentException(
                $"{product.Name} is neither carried nor handed out.",
                nameof(productId)
            );
        var step = Serving.Of(product, 1, station?.CupMl) with
        {
            Id = NextId(sheet.Steps),
            Km = station?.Km ?? Math.Clamp(Math.Round(km, 1), 0, sheet.Profile.DistanceKm),
            Station = station is null ? null : NameOf(station),
            Locked = true,
        };
        return sheet with { Steps = CourseReading.InOrder(sheet.Steps.Append(step)) };
    }

    /// <summary>A key no step has.</summary>
    public static int NextId(IEnumerable<CourseStep> steps) =>
        steps.Select(s => s.Id).DefaultIfEmpty(0).Max() + 1;

    /// <summary>What a station is called: its name, or its place.</summary>
    public static string NameOf(AidStation station)
    {
        ArgumentNullException.ThrowIfNull(station);
        return station.Name.Length > 0 ? station.Name : CourseClock.Place(station.Km);
    }

    private static CourseStep ToStation(CourseSheet sheet, CourseStep step, decimal km) =>
        Nearest(sheet, step.ProductId, km) is { } station
        && sheet.Find(step.ProductId) is { } product
            ? Serving.Of(product, step.Count, station.CupMl) with
            {
                Id = step.Id,
                Km = station.Km,
                Station = NameOf(station),
                Locked = true,
            }
            : step;

    private static AidStation? Nearest(CourseSheet sheet, string productId, decimal km) =>
        sheet.Stations.Where(s => s.Has(productId)).MinBy(s => Math.Abs(s.Km - km));

    private static decimal? CupOf(CourseSheet sheet, CourseStep step) =>
        step.Station is null ? null : sheet.Stations.FirstOrDefault(s => s.Km == step.Km)?.CupMl;

    private static CourseSheet Change(
        CourseSheet sheet,
        int stepId,
        Func<CourseStep, CourseStep> change
    )
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet with
        {
            Steps = CourseReading.InOrder(sheet.Steps.Select(s => s.Id == stepId ? change(s) : s)),
        };
    }
}
