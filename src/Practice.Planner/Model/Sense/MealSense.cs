namespace Practice.Planner.Model.Sense;

/// <summary>The rules that make a plate a meal, in the order in which one would explain them.</summary>
internal static class MealSense
{
    public static void Add(MenuModel model, Plate plate)
    {
        AMealFollowsOnePattern.Add(model, plate);
        AFoodIsServedInItsSteps.Add(model, plate);
        APatternTakesItsParts.Add(model, plate);
        ASideStaysASide.Add(model, plate);
        APlateHoldsSoManyFoods.Add(model, plate);
        AFamilyComesOnce.Add(model, plate);
        WhatGoesTogetherIsInMeasure.Add(model, plate);
        WhatClashesStaysApart.Add(model, plate);
        ASandwichHasOneMeat.Add(model, plate);
        ADishKeepsToItsKitchen.Add(model, plate);
        TheBaseCarriesTheMeal.Add(model, plate);
    }
}
