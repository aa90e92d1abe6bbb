using System.Collections.Immutable;
using Practice.Domain.Course;
using Practice.Domain.Plans;
using Practice.Domain.Practices;
using Practice.Handouts.Blocks;

namespace Practice.Handouts.Content;

/// <summary>
/// The race card, folded to a quarter of the sheet: what to take by place and clock on the front, cautions and what to
/// do in an emergency on the back.
/// </summary>
public static class RaceCard
{
    /// <summary>Builds the card of a plan.</summary>
    /// <exception cref="InvalidOperationException">The plan has no course plan.</exception>
    public static HandoutDoc Build(
        RaceWeekPlan plan,
        PracticeProfile practice,
        HandoutOptions options
    )
    {
        var (reader, safe) = WeekHandout.Prepare(plan, practice, options);
        var course =
            safe.Course ?? throw new InvalidOperationException("There is no course plan yet.");
        return Letterhead.Paper(
            "Race card",
            safe,
            practice,
            options,
            reader,
            [Front(safe, course, options, reader), Back(safe, course)]
        ) with
        {
            IsFoldedCard = true,
        };
    }

    private static CardSide Front(
        RaceWeekPlan plan,
        CoursePlan course,
        HandoutOptions options,
        Reader reader
    )
    {
        var start = plan.Header.RaceStart;
        var draft = options.IssuedOn is null ? "Draft, not to be followed. " : "";
        return new(
            $"{plan.Header.ClientName}, {plan.Header.RaceName}",
            IsFront: true,
            [
                new Paragraph(
                    $"{draft}{reader.Dates.ShortDay(start.Date)}, start {reader.Dates.Time(start.TimeOfDay)}, finish in {CourseClock.Words(course.Finish)} h. The place counts more than the clock.",
                    IsQuiet: true
                ),
                new Table(
                    "What to take, by place and clock.",
                    [new("At", 1.15), new("Take", 2.6)],
                    [
                        .. CourseSchedule
                            .Stops(plan, reader)
                            .Select(s => new RowGroup(
                                new(s.Km, s.Clock),
                                [
                                    [
                                        Words.Of(
                                            new Run(s.Take),
                                            new Run($"\n{s.Where}", RunStyle.Quiet)
                                        ),
                                    ],
                                ]
                            )),
                    ],
                    null
                ),
            ]
        );
    }

    private static CardSide Back(RaceWeekPlan plan, CoursePlan course) =>
        new(
            "Cautions and emergency",
            IsFront: false,
            [
                new Heading(3, "Stop and get medical help"),
                new Bullets([
                    "Chest pain, fainting, fits, confusion, or a headache with vomiting",
                    "Swollen hands or face, or a bloated stomach: drink nothing more",
                    "No more sweat and shivering in heat, or blood in vomit or stool",
                ]),
                new Heading(3, "To helpers"),
                new Paragraph(
                    $"{plan.Header.ClientName} carries this card. Call the race's medical team or the emergency number; do not give water to someone who is confused before low blood sodium is ruled out."
                ),
                new Paragraph("Emergency contact: ______________________________"),
                new Paragraph("Allergies, medicines: ______________________________"),
                new Heading(3, "Keep in mind"),
                new Bullets([
                    .. course.Advice.Select(Words.FromString),
                    .. plan.Cautions.Where(c => c.ForClient).Select(c => Words.FromString(c.Text)),
                ]),
                new Paragraph(
                    "Fold the upper half back, then the left half back: the schedule is in front, this side behind.",
                    IsQuiet: true
                ),
            ]
        );
}
