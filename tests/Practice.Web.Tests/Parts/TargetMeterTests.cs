using Bunit;
using NodaTime;
using Practice.Web.Features.Gallery;
using Practice.Web.Parts.Meters;

namespace Practice.Web.Tests.Parts;

public class TargetMeterTests : BunitContext
{
    [Fact]
    public void Its_name_asks_why_and_opens_formula_inputs_and_source()
    {
        var target = Samples.Targets.CarbohydratePerDay;
        var meter = Render<TargetMeter>(p => p.Add(m => m.Target, target).Add(m => m.Value, 600));

        var why = meter.Find("button.why");
        var panel = meter.Find($"#{why.GetAttribute("popovertarget")}[popover]");

        Assert.Contains(target.Basis.Formula, panel.TextContent, StringComparison.Ordinal);
        Assert.All(
            target.Basis.Inputs,
            input => Assert.Contains(input.Value, panel.TextContent, StringComparison.Ordinal)
        );
        Assert.All(
            target.Basis.Sources,
            source => Assert.Contains(source.Citation, panel.TextContent, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Two_meters_open_panels_of_their_own()
    {
        var gallery = Samples.Targets.All.Select(t =>
            Render<TargetMeter>(p => p.Add(m => m.Target, t))
                .Find("button.why")
                .GetAttribute("popovertarget")
        );
        Assert.Distinct(gallery);
    }

    [Fact]
    public void The_drawing_says_in_a_sentence_what_it_shows()
    {
        var meter = Render<TargetMeter>(p =>
            p.Add(m => m.Target, Samples.Targets.Fibre)
                .Add(m => m.Value, 19.2m)
                .Add(m => m.Label, "Fibre, Saturday")
        );
        Assert.Equal(
            "Fibre, Saturday: 19 at most 15 g/day, 4 g over",
            meter.Find("svg[role=img]").GetAttribute("aria-label")
        );
    }

    [Fact]
    public void A_practitioners_own_value_is_told_with_who_why_and_when_by_the_practices_clock()
    {
        var own = Samples.Targets.Fibre with
        {
            Override = new(
                "fibre",
                20,
                15,
                "Robin",
                Instant.FromUtc(2026, 8, 31, 23, 30),
                "Tolerated in rehearsal"
            ),
        };
        var meter = Render<TargetMeter>(p =>
            p.Add(m => m.Target, own).AddCascadingValue(DateTimeZoneProviders.Tzdb["Europe/London"])
        );
        Assert.Contains(
            "Set by Robin on 1 Sep 2026: “Tolerated in rehearsal”",
            meter.Markup,
            StringComparison.Ordinal
        );
        Assert.Contains("Computed: 15", meter.Markup, StringComparison.Ordinal);
    }
}
