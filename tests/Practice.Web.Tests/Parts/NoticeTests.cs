using Bunit;
using Practice.Domain.Plans;
using Practice.Domain.Screening;
using Practice.Web.Features.Gallery;
using Practice.Web.Parts.Notices;

namespace Practice.Web.Tests.Parts;

public class NoticeTests : BunitContext
{
    [Fact]
    public async Task A_hold_says_why_and_offers_the_clearance()
    {
        var asked = new List<Hold>();
        var banner = Render<HoldBanner>(p =>
            p.Add(b => b.Holds, [Samples.Hold]).Add(b => b.OnClear, asked.Add)
        );
        Assert.Contains(Samples.Hold.Reason, banner.Markup, StringComparison.Ordinal);
        await banner.Find("button").ClickAsync();
        Assert.Equal([Samples.Hold], asked);
    }

    [Fact]
    public void Whoever_may_not_clear_sees_no_way_to_it()
    {
        var banner = Render<HoldBanner>(p => p.Add(b => b.Holds, [Samples.Hold]));
        Assert.Empty(banner.FindAll("button"));
    }

    [Fact]
    public void Without_a_hold_there_is_no_banner() =>
        Assert.Equal("", Render<HoldBanner>(p => p.Add(b => b.Holds, [])).Markup.Trim());

    [Fact]
    public async Task A_conflict_offers_its_relaxations_best_first()
    {
        var chosen = new List<Relaxation>();
        var panel = Render<ConflictPanel>(p =>
            p.Add(c => c.Conflicts, [Samples.Conflict]).Add(c => c.OnRelax, chosen.Add)
        );
        var buttons = panel.FindAll("button");
        Assert.Contains("primary", buttons[0].ClassList);
        await buttons[1].ClickAsync();
        Assert.Equal([Samples.Conflict.Relaxations[1]], chosen);
    }

    [Fact]
    public void What_was_not_proven_is_not_said_to_be()
    {
        var panel = Render<ConflictPanel>(p =>
            p.Add(c => c.Conflicts, [Samples.Conflict with { Proven = false }])
        );
        Assert.Contains("that proves nothing", panel.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("It is proven", panel.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_caution_says_who_reads_it()
    {
        var list = Render<CautionList>(p => p.Add(c => c.Cautions, Samples.Cautions));
        Assert.Equal(
            ["On the client's paper too", "For you only"],
            list.FindAll("small").Select(s => s.TextContent.Split(" · ")[0])
        );
    }

    [Fact]
    public async Task Work_that_could_not_be_saved_says_so_and_can_be_tried_again()
    {
        var tried = 0;
        var state = Render<SaveState>(p =>
            p.Add(s => s.State, SaveStanding.NotSaved).Add(s => s.OnRetry, () => tried++)
        );
        Assert.Contains(
            "Not saved",
            state.Find("[role=status]").TextContent,
            StringComparison.Ordinal
        );
        await state.Find("button").ClickAsync();
        Assert.Equal(1, tried);
    }

    [Fact]
    public void Two_versions_are_laid_side_by_side_where_they_differ()
    {
        var conflict = Render<SaveConflict>(p =>
            p.Add(c => c.Mine, [new("Name", "Maren Holt"), new("Height", "171 cm")])
                .Add(c => c.Theirs, [new("Name", "Maren Holt"), new("Height", "")])
        );
        var row = Assert.Single(conflict.FindAll("tbody tr"));
        Assert.Equal(["Height", "–", "171 cm"], row.Children.Select(c => c.TextContent));
    }
}
