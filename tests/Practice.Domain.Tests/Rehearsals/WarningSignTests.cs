using NodaTime;
using Practice.Domain.Practices;
using Practice.Domain.Rehearsals;
using Practice.Domain.Screening;

namespace Practice.Domain.Tests.Rehearsals;

// Blood, collapse, repeated vomiting, chest pain: medical referral, not a food question (common practice).
public class WarningSignTests
{
    [Theory]
    [InlineData(WarningSign.BloodInStool)]
    [InlineData(WarningSign.BloodInVomit)]
    [InlineData(WarningSign.Collapse)]
    [InlineData(WarningSign.RepeatedVomiting)]
    [InlineData(WarningSign.ChestPain)]
    public void A_warning_sign_fails_the_trial_and_holds_every_plan(WarningSign sign)
    {
        var feedback = new Feedback { ReceivedAt = default, WarningSigns = [sign] };

        Assert.Equal(TrialVerdict.Fail, TrialVerdicts.Of(feedback, SymptomThresholds.House));
        var hold = WarningSigns.Hold(feedback.WarningSigns)!;
        Assert.Contains(sign.InWords(), hold.Reason, StringComparison.Ordinal);
        Assert.Equal(LiftedBy.Professional, hold.LiftedBy);
    }

    [Fact]
    public void Only_a_professional_lifts_the_hold()
    {
        var hold = WarningSigns.Hold([WarningSign.Collapse])!;
        var day = new LocalDate(2027, 4, 1);
        var own = new Clearance(hold.Key, "Me", "", day, day, "Fine.");

        Assert.False(hold.IsLiftedBy(own, day));
        Assert.True(hold.IsLiftedBy(own with { Profession = "physician" }, day));
    }

    [Fact]
    public void The_advice_may_stand_on_a_number_free_paper()
    {
        Assert.True(NumberFree.Allows(WarningSigns.Advice.Text));
        Assert.DoesNotContain(WarningSigns.Advice.Text, char.IsDigit);
        Assert.True(WarningSigns.Advice.ForClient);
    }

    [Fact]
    public void Without_a_sign_there_is_no_hold() => Assert.Null(WarningSigns.Hold([]));

    [Fact]
    public void A_sign_told_after_a_clearance_needs_another()
    {
        var (first, second) = (new LocalDate(2027, 3, 7), new LocalDate(2027, 3, 21));
        var rehearsals = new[] { Told(first), Told(second) };
        var cleared = new Clearance(
            WarningSigns.HoldKey,
            "Dr A. Example",
            "physician",
            new LocalDate(2027, 3, 10),
            new LocalDate(2027, 9, 1),
            "Examined."
        );
        var today = new LocalDate(2027, 3, 25);

        Assert.NotNull(WarningSigns.Standing(rehearsals[..1], [], today));
        Assert.Null(WarningSigns.Standing(rehearsals[..1], [cleared], today));
        Assert.NotNull(WarningSigns.Standing(rehearsals, [cleared], today));
        Assert.NotNull(
            WarningSigns.Standing(rehearsals[..1], [cleared], cleared.ExpiresOn.PlusDays(1))
        );
        Assert.Null(WarningSigns.Standing([], [], today));
    }

    private static Rehearsal Told(LocalDate runOn)
    {
        var rehearsal = Rehearsal.Book(
            Guid.NewGuid(),
            Guid.NewGuid(),
            Guid.NewGuid(),
            Sample.Full with
            {
                RunOn = runOn,
            },
            Sample.Plan()
        );
        rehearsal.Tell(
            new()
            {
                ReceivedAt = runOn.AtMidnight().InUtc().ToInstant(),
                WarningSigns = [WarningSign.ChestPain],
            }
        );
        return rehearsal;
    }
}
