using NodaTime;
using Practice.Domain.Foods;
using Practice.Domain.Rehearsals;

namespace Practice.Domain.Tests.Rehearsals;

public class RehearsalTests
{
    private static readonly Instant Now = Instant.FromUtc(2027, 3, 29, 9, 0);
    private static readonly ReviewDecision Passed = new(TrialVerdict.Pass, "A. Person", Now, "");

    [Fact]
    public void It_is_booked_told_of_and_reviewed()
    {
        var rehearsal = Book();
        Assert.Equal(RehearsalStatus.Booked, rehearsal.Status);

        rehearsal.Tell(new Feedback { ReceivedAt = Now });
        Assert.Equal(RehearsalStatus.FedBack, rehearsal.Status);

        rehearsal.Review(Passed);
        Assert.Equal(RehearsalStatus.Reviewed, rehearsal.Status);
        Assert.Equal(Passed, rehearsal.Decision);
    }

    [Fact]
    public void What_was_told_may_be_corrected_until_it_is_reviewed()
    {
        var rehearsal = Book();
        rehearsal.Tell(new Feedback { ReceivedAt = Now, Note = "first" });
        rehearsal.Tell(new Feedback { ReceivedAt = Now, Note = "second" });
        Assert.Equal("second", rehearsal.Feedback!.Note);

        rehearsal.Review(Passed);
        Assert.Throws<InvalidOperationException>(() =>
            rehearsal.Tell(new Feedback { ReceivedAt = Now })
        );
    }

    [Fact]
    public void Nothing_is_reviewed_before_it_is_told_of() =>
        Assert.Throws<InvalidOperationException>(() => Book().Review(Passed));

    [Fact]
    public void What_took_place_is_neither_moved_nor_cancelled()
    {
        var rehearsal = Book();
        rehearsal.Tell(new Feedback { ReceivedAt = Now });

        Assert.Throws<InvalidOperationException>(() => rehearsal.Cancel("ill"));
        Assert.Throws<InvalidOperationException>(() => rehearsal.Change(Details));
    }

    [Fact]
    public void Cancelling_keeps_the_reason()
    {
        var rehearsal = Book();
        rehearsal.Cancel("  ill ");

        Assert.Equal(RehearsalStatus.Cancelled, rehearsal.Status);
        Assert.Equal("ill", rehearsal.CancelledBecause);
    }

    [Fact]
    public void Numbers_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Book().Change(Details with { Dose = 1.1m }));
        Assert.Throws<ArgumentException>(() =>
            Book().Change(Details with { Part = new(Guid.Empty, 1, 2) })
        );
        Assert.Throws<ArgumentException>(() =>
            Book().Change(Details with { RunFuel = new(200, null, "") })
        );
        Assert.Throws<ArgumentException>(() =>
            Book().Tell(new Feedback { ReceivedAt = Now, UrineColour = 9 })
        );
        Assert.Throws<ArgumentException>(() =>
            Book()
                .Tell(
                    new Feedback
                    {
                        ReceivedAt = Now,
                        Occasions =
                        [
                            new(
                                Details.RunOn,
                                OccasionKind.Lunch,
                                [new("toast", EatenHow.AnotherAmount, 40)],
                                []
                            ),
                        ],
                    }
                )
        );
    }

    private static readonly RehearsalDetails Details = new()
    {
        RunOn = new LocalDate(2027, 3, 28),
        Kind = RehearsalKind.Full,
        Part = new(Guid.NewGuid(), 2),
        Breakfast = new(3, 210, "porridge and juice"),
        RunFuel = new(60, 500, "a gel every half hour"),
    };

    private static Rehearsal Book() =>
        Rehearsal.Book(Guid.NewGuid(), Guid.NewGuid(), Guid.NewGuid(), Details, Sample.Plan());
}
