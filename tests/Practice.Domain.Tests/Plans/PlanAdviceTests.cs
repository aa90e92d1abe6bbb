using System.Text.RegularExpressions;
using NodaTime;
using Practice.Domain.Plans;
using Practice.Domain.Quantities;
using Practice.Domain.Screening;

namespace Practice.Domain.Tests.Plans;

public partial class PlanAdviceTests
{
    private static readonly PlanHeader Header = new()
    {
        ClientName = "Ines Example",
        BodyMass = BodyMass.OfKilograms(70),
        RaceName = "Harbour Marathon",
        DistanceKm = 42.195m,
        RaceStart = new LocalDateTime(2027, 4, 18, 9, 0),
        ZoneId = "Europe/London",
    };

    [Fact]
    public void The_reason_names_the_amount_for_those_who_read_numbers()
    {
        var why = PlanAdvice.Why(Header, SampleTargets.At(700), Adjustments.None);
        Assert.Contains("700 g", why, StringComparison.Ordinal);
        Assert.Contains("about 1.0–1.5 kg", why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_free_reader_gets_words_only()
    {
        var free = Adjustments.None with { NumberFree = true, NoWeighing = true };
        var fluids = PlanAdvice.Fluids(free);

        Assert.DoesNotMatch(
            AnyDigit(),
            PlanAdvice.Why(Header, SampleTargets.At(700), free) + fluids.Drinking + fluids.Salting
        );
    }

    [Fact]
    public void No_salt_advice_and_no_drinking_plan_where_screening_forbids_them()
    {
        var careful = PlanAdvice.Fluids(
            Adjustments.None with
            {
                NoAddedSodium = true,
                ThirstOnly = true,
            }
        );

        Assert.Null(careful.Salting);
        Assert.DoesNotContain("more than usual", careful.Drinking, StringComparison.Ordinal);
    }

    [Fact]
    public void Fibre_is_not_spoken_of_where_it_must_not_be_restricted() =>
        Assert.DoesNotContain(
            "fibre",
            PlanAdvice.Why(
                Header,
                SampleTargets.At(700),
                Adjustments.None with
                {
                    NoLowResidue = true,
                }
            ),
            StringComparison.Ordinal
        );

    [GeneratedRegex(@"\d")]
    private static partial Regex AnyDigit();
}
