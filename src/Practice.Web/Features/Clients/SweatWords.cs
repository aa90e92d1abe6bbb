using Practice.Domain.Physiology;

namespace Practice.Web.Features.Clients;

/// <summary>Doubts about a sweat test, said to the practitioner.</summary>
internal static class SweatWords
{
    public static string Of(SweatDoubt doubt) =>
        doubt switch
        {
            SweatDoubt.TooLow => "Too low to be right: look at the weighing again.",
            SweatDoubt.TooHigh =>
                "More than the heat of the run explains: look at the weighing again.",
            SweatDoubt.OtherHeat =>
                "The race will be more than 5 °C of heat stress away from the test: test again.",
            SweatDoubt.HeatUnknown =>
                "Without its weather nobody can tell whether it holds for the race.",
            SweatDoubt.Old => "More than a year old.",
            _ => doubt.ToString(),
        };
}
