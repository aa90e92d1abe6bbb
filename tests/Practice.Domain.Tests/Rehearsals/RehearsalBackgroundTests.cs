using NodaTime;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

public class RehearsalBackgroundTests
{
    private static readonly LocalDate Monday = new(2027, 3, 1);

    [Fact]
    public void A_day_has_one_reason_the_latest()
    {
        var background = RehearsalBackground.Of(Guid.NewGuid(), Guid.NewGuid());
        background.Block(Monday, Monday.PlusDays(4), BlockedBy.Travel);
        background.Block(Monday.PlusDays(3), Monday.PlusDays(5), BlockedBy.Illness);
        Assert.Equal(6, background.Blocked.Length);
        Assert.Equal(
            [
                BlockedBy.Travel,
                BlockedBy.Travel,
                BlockedBy.Travel,
                BlockedBy.Illness,
                BlockedBy.Illness,
                BlockedBy.Illness,
            ],
            background.Blocked.Select(b => b.By)
        );

        background.Free(Monday, Monday.PlusDays(4));
        Assert.Equal([Monday.PlusDays(5)], background.Blocked.Select(b => b.On));
    }

    [Fact]
    public void No_stretch_ends_before_it_begins() =>
        Assert.Throws<ArgumentException>(() =>
            RehearsalBackground
                .Of(Guid.NewGuid(), Guid.NewGuid())
                .Block(Monday, Monday.PlusDays(-1), BlockedBy.Heat)
        );
}
