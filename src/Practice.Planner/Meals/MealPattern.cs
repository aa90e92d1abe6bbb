using System.Collections.Immutable;
using Practice.Domain.Foods;

namespace Practice.Planner.Meals;

/// <summary>How many foods of a role a meal takes.</summary>
/// <param name="Role">The role.</param>
/// <param name="Least">At least so many.</param>
/// <param name="Most">At most so many.</param>
/// <param name="Scale">Part of the usual largest helping, where the role is only a side here.</param>
internal sealed record Part(MealRole Role, int Least, int Most, double Scale = 1);

/// <summary>A kind of meal a person would recognise.</summary>
/// <param name="Name">Its name, as printed on the plan.</param>
/// <param name="At">The plates it suits.</param>
/// <param name="Cost">0 everyday to 4 seldom: how readily it is chosen.</param>
/// <param name="Parts">What it is made of.</param>
/// <param name="LeastFoods">At least so many foods.</param>
internal sealed record MealPattern(
    string Name,
    ImmutableArray<OccasionKind> At,
    int Cost,
    ImmutableArray<Part> Parts,
    int LeastFoods = 1
)
{
    public Part? Find(MealRole role) => Parts.FirstOrDefault(p => p.Role == role);
}
