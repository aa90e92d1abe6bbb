using NodaTime;
using Practice.Domain.Foods;

namespace Practice.Domain.Plans.Weeks;

/// <summary>Which meals of the race day.</summary>
public enum RaceDayPart
{
    /// <summary>Before the start.</summary>
    Morning,

    /// <summary>After the finish.</summary>
    Recovery,
}

/// <summary>
/// Edits of the race week by hand. Each makes a new plan and changes nothing but what it names. A plan whose week was
/// not laid out yet stays as it is.
/// </summary>
public static class WeekEdits
{
    /// <summary>The plan with a changed week.</summary>
    public static RaceWeekPlan EditWeek(this RaceWeekPlan plan, Func<RaceWeek, RaceWeek> change)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(change);
        return plan.Week is { } week ? plan with { Week = change(week) } : plan;
    }

    /// <summary>Writes a note for a day.</summary>
    public static RaceWeekPlan Note(this RaceWeekPlan plan, LocalDate date, string note) =>
        plan.EditDay(date, d => d with { Note = note.Trim() });

    /// <summary>Writes the note for the meals of the race day.</summary>
    public static RaceWeekPlan Note(this RaceWeekPlan plan, RaceDayPart part, string note) =>
        plan.EditWeek(w =>
            part == RaceDayPart.Morning
                ? w with
                {
                    MorningNote = note.Trim(),
                }
                : w with
                {
                    RecoveryNote = note.Trim(),
                }
        );

    /// <summary>Marks a day as one of travel, and moves its loading meals out of the hours on the road; null at home.</summary>
    /// <exception cref="ArgumentException">Arrives before leaving.</exception>
    public static RaceWeekPlan Travelling(this RaceWeekPlan plan, LocalDate date, Travel? travel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (travel is not null && travel.To <= travel.From)
            throw new ArgumentException("Arriving comes after leaving.", nameof(travel));
        var marked = plan.EditDay(date, d => d with { Travel = travel });
        if (marked.Days.FirstOrDefault(d => d.Date == date) is not { } day)
            return marked;
        var usual = LoadingLayout.UsualTimes(day, plan.Choices, plan.Header.RaceStart);
        return marked.With(
            day with
            {
                Occasions = travel is null ? usual : TravelShift.Apply(usual, travel),
            }
        );
    }

    /// <summary>Moves a sitting of a loading day; the times of the others stay.</summary>
    public static RaceWeekPlan MoveSitting(
        this RaceWeekPlan plan,
        LocalDate date,
        OccasionKind kind,
        LocalTime time
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.With(plan[date].With(plan[date][kind] with { Time = time }));
    }

    /// <summary>Shows the client's own clock beside the race's; null where they are the same.</summary>
    /// <exception cref="ArgumentException">The zone is unknown.</exception>
    public static RaceWeekPlan LivingIn(this RaceWeekPlan plan, string? zoneId)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (zoneId is not null && DateTimeZoneProviders.Tzdb.GetZoneOrNull(zoneId) is null)
            throw new ArgumentException($"'{zoneId}' is not a known time zone.", nameof(zoneId));
        return plan.EditWeek(w =>
            w with
            {
                ClientZoneId = zoneId == plan.Header.ZoneId ? null : zoneId,
            }
        );
    }

    /// <summary>Adds something to pack.</summary>
    public static RaceWeekPlan Pack(this RaceWeekPlan plan, string section, string what) =>
        plan.EditWeek(w =>
            w with
            {
                Packing = w.Packing.Add(new(section, what.Trim(), IsOwn: true)),
            }
        );

    /// <summary>Leaves something at home.</summary>
    public static RaceWeekPlan Unpack(this RaceWeekPlan plan, PackItem item) =>
        plan.EditWeek(w => w with { Packing = w.Packing.Remove(item) });

    /// <summary>The meals of the race day as a plan of one day, so that whatever edits or fills plans serves them too.</summary>
    /// <exception cref="InvalidOperationException">The week was not laid out yet.</exception>
    public static RaceWeekPlan AsPlan(this RaceWeekPlan plan, RaceDayPart part)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var week =
            plan.Week ?? throw new InvalidOperationException("The week was not laid out yet.");
        return plan with { Days = [part == RaceDayPart.Morning ? week.Morning : week.Recovery] };
    }

    /// <summary>Puts the meals of the race day back.</summary>
    public static RaceWeekPlan WithPart(this RaceWeekPlan plan, RaceDayPart part, PlanDay day) =>
        plan.EditWeek(w =>
            part == RaceDayPart.Morning ? w with { Morning = day } : w with { Recovery = day }
        );

    /// <summary>Edits the meals of the race day as one edits a plan.</summary>
    public static RaceWeekPlan EditPart(
        this RaceWeekPlan plan,
        RaceDayPart part,
        Func<RaceWeekPlan, RaceWeekPlan> edit
    )
    {
        ArgumentNullException.ThrowIfNull(edit);
        return plan.WithPart(part, edit(plan.AsPlan(part)).Days[0]);
    }

    private static RaceWeekPlan EditDay(
        this RaceWeekPlan plan,
        LocalDate date,
        Func<WeekDay, WeekDay> change
    ) =>
        plan.EditWeek(w =>
            w with
            {
                Days = [.. w.Days.Select(d => d.Date == date ? change(d) : d)],
            }
        );
}
