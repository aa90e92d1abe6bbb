using NodaTime;
using Practice.Domain.Foods;

namespace Practice.Domain.Plans;

/// <summary>Names one portion of a plan.</summary>
/// <param name="Date">The day.</param>
/// <param name="Kind">The sitting.</param>
/// <param name="FoodId">The food.</param>
public sealed record PortionRef(LocalDate Date, OccasionKind Kind, string FoodId);
