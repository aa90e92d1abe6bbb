using System.Collections.Immutable;
using System.Globalization;
using Practice.Domain.Debriefs;
using Practice.Domain.Rehearsals;

namespace Practice.Service.Audit;

/// <summary>What a client told of the body in a rehearsal or after a race, fact by fact. What was eaten is no health fact.</summary>
internal static class ToldFacts
{
    public static ImmutableDictionary<string, string> Of(Feedback? told) =>
        told is null
            ? []
            : HealthFacts
                .Facts(
                    ("warning signs", HealthFacts.List(told.WarningSigns)),
                    ("vomited", YesNo(told.Vomited)),
                    ("ill or period", YesNo(told.IllOrPeriod)),
                    ("body mass before the run kg", HealthFacts.Number(told.MassBefore?.Kilograms)),
                    ("body mass after the run kg", HealthFacts.Number(told.MassAfter?.Kilograms)),
                    ("urine colour", HealthFacts.Number(told.UrineColour)),
                    ("sleep h", HealthFacts.Number(told.SleepHours)),
                    ("stopped by the gut", YesNo(told.Run?.StoppedByGut)),
                    ("words", told.Note),
                    ("words on the run", told.Run?.Note ?? "")
                )
                .AddRange(
                    told.Symptoms.GroupBy(s => $"symptom {s.Item}, {s.Moment}")
                        .Select(s =>
                            KeyValuePair.Create(s.Key, HealthFacts.List(s.Select(x => x.Score)))
                        )
                );

    public static ImmutableDictionary<string, string> Of(DebriefReport? told) =>
        told is null
            ? []
            : HealthFacts.Facts(
                ("worst gut symptom", HealthFacts.Number(told.WorstGut)),
                ("symptoms", told.Symptoms)
            );

    /// <summary>What foods did before any trial, and days of illness. Other days that do not do are no health fact.</summary>
    public static ImmutableDictionary<string, string> Of(RehearsalBackground told) =>
        HealthFacts.Facts(
            ("foods that gave trouble", HealthFacts.List(told.Gut.PastTrouble)),
            ("foods eaten every week", HealthFacts.List(told.Gut.EatenWeekly)),
            (
                "days of illness",
                HealthFacts.List(
                    told.Blocked.Where(b => b.By == BlockedBy.Illness)
                        .Select(b => b.On.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture))
                )
            )
        );

    private static string YesNo(bool? said) =>
        said switch
        {
            true => "yes",
            false => "no",
            null => "",
        };
}
