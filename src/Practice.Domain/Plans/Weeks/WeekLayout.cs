using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;
using Practice.Domain.Races;
using Practice.Domain.Screening;

namespace Practice.Domain.Plans.Weeks;

/// <summary>Lays out the race week around the loading days of a plan, its meals still without food.</summary>
public static class WeekLayout
{
    /// <summary>Days before the race that the week begins.</summary>
    public const int FirstDay = 7;

    /// <summary>The week of a plan.</summary>
    /// <param name="plan">The plan with its loading days.</param>
    /// <param name="client">Who it is for.</param>
    /// <param name="race">What it is for.</param>
    /// <param name="adjustments">What screening changed.</param>
    /// <param name="today">Today, for the client's age.</param>
    public static RaceWeek Of(
        RaceWeekPlan plan,
        Client client,
        Race race,
        Adjustments adjustments,
        LocalDate today
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(client);
        ArgumentNullException.ThrowIfNull(race);
        ArgumentNullException.ThrowIfNull(adjustments);
        var (start, mass) = (plan.Header.RaceStart, plan.Header.BodyMass);
        var heat = race.Weather is { } weather ? HeatAdvice.Of(weather) : null;
        return new RaceWeek
        {
            ClientZoneId = OtherZoneOf(client, plan),
            Runner = new(
                client.Physique.Sex,
                MaximalOxygenUptake.Of(client.Physique).MlPerKgMin,
                race.Discipline
            ),
            Days =
            [
                .. Enumerable
                    .Range(-1, FirstDay + 2)
                    .Reverse()
                    .Select(before => Day(start.Date, before, plan, adjustments)),
            ],
            Morning = RaceMorning.Layout(start, mass, plan.Targets, adjustments),
            MorningAdvice = WeekAdvice.Morning(mass, adjustments),
            Recovery = Weeks.Recovery.Layout(FinishOf(plan), mass, adjustments),
            RecoveryAdvice = WeekAdvice.Recovery(mass, adjustments),
            Fluids = WeekAdvice.Fluids(adjustments),
            Caffeine = WeekAdvice.Caffeine(adjustments, client.AgeOn(today) >= 18),
            Sleep = WeekAdvice.Sleep,
            DoNotTry = WeekAdvice.DoNotTry,
            Packing = Packing.Usual(heat),
            Heat = heat,
        };
    }

    // plans from before clients had a zone were told it themselves
    private static string? OtherZoneOf(Client client, RaceWeekPlan plan) =>
        client.ZoneId is null ? plan.Week?.ClientZoneId
        : client.ZoneId == plan.Header.ZoneId ? null
        : client.ZoneId;

    /// <summary>A new layout that keeps what a hand wrote into an older one: notes, travel, own things to pack.</summary>
    public static RaceWeek Keeping(this RaceWeek week, RaceWeek? older)
    {
        ArgumentNullException.ThrowIfNull(week);
        if (older is null)
            return week;
        return week with
        {
            Days =
            [
                .. week.Days.Select(d =>
                    older.Days.FirstOrDefault(o => o.Date == d.Date) is { } was
                        ? d with
                        {
                            Note = was.Note,
                            Travel = was.Travel,
                        }
                        : d
                ),
            ],
            MorningNote = older.MorningNote,
            RecoveryNote = older.RecoveryNote,
            Packing = [.. week.Packing, .. older.Packing.Where(p => p.IsOwn)],
        };
    }

    /// <summary>A week whose advice says what screening says today; meals, notes, travel and packing stay.</summary>
    public static RaceWeek Freshened(this RaceWeek fresh, RaceWeek older)
    {
        ArgumentNullException.ThrowIfNull(older);
        return fresh.Keeping(older) with
        {
            Morning = older.Morning,
            Recovery = older.Recovery,
            Packing = older.Packing,
        };
    }

    /// <summary>Expected finish in the race's clock; at a usual speed of three hours and a half where none is known.</summary>
    public static LocalDateTime FinishOf(RaceWeekPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var time =
            plan.Course?.Finish
            ?? Duration.FromMinutes((double)(plan.Targets.ExpectedFinish.Aim ?? 210));
        return plan.Header.RaceStart.PlusMinutes((long)Math.Round(time.TotalMinutes));
    }

    private static WeekDay Day(
        LocalDate raceDay,
        int daysBefore,
        RaceWeekPlan plan,
        Adjustments adjustments
    )
    {
        var kind = KindOf(daysBefore, plan);
        return new WeekDay
        {
            Date = raceDay.PlusDays(-daysBefore),
            DaysBefore = daysBefore,
            Kind = kind,
            Pointers = WeekAdvice.PointersOf(kind, daysBefore, adjustments),
        };
    }

    private static WeekDayKind KindOf(int daysBefore, RaceWeekPlan plan) =>
        daysBefore switch
        {
            < 0 => WeekDayKind.After,
            0 => WeekDayKind.RaceDay,
            1 => WeekDayKind.Eve,
            _ when plan.Days.Any(d => d.DaysBefore == daysBefore) => WeekDayKind.Loading,
            2 => WeekDayKind.LowFibre,
            _ => WeekDayKind.Ordinary,
        };
}
