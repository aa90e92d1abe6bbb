using System.Collections.Immutable;
using System.Globalization;
using Practice.Domain.Clients;
using Practice.Domain.Practices;
using Practice.Domain.Screening;
using Practice.Service.Clients;

namespace Practice.Service.Audit;

/// <summary>What is on file about somebody's health, fact by fact, so that an audit can say what was and what became.</summary>
internal static class HealthFacts
{
    public static ImmutableDictionary<string, string> Of(ClientDetails client) =>
        Facts(
            ("birth date", $"{client.BirthDate:uuuu-MM-dd}"),
            ("sex", $"{client.Physique.Sex}"),
            ("height cm", Number(client.Physique.HeightCm)),
            ("body fat %", Number(client.Physique.BodyFatPercent)),
            ("VO2max mL/kg/min", Number(client.Physique.Vo2Max)),
            ("weekly km", Number(client.Physique.WeeklyKm)),
            ("diet", $"{client.Diet.Pattern}"),
            ("allergies", List(client.Diet.Allergies)),
            ("other allergy", client.Diet.OtherAllergy ?? ""),
            ("refuses", $"{client.Diet.Refused}"),
            ("likes", List(client.Tastes.Likes)),
            ("dislikes", List(client.Tastes.Dislikes)),
            ("tolerates", List(client.Tastes.Tolerated)),
            ("suspects", List(client.Tastes.Suspect)),
            ("notes", client.Notes)
        );

    public static ImmutableDictionary<string, string> Of(ScreeningAnswers answers) =>
        answers.Given.ToImmutableDictionary(
            a => $"answer {a.Key}",
            a => string.Join(", ", a.Value)
        );

    public static ImmutableDictionary<string, string> Of(IEnumerable<BodyMassEntry> log) =>
        log.ToImmutableDictionary(
            e => $"body mass kg, {e.On:uuuu-MM-dd}",
            e => Number(e.Mass.Kilograms)
        );

    public static ImmutableDictionary<string, string> Of(IEnumerable<SweatTest> log) =>
        log.ToImmutableDictionary(
            t => $"sweat test, {t.On:uuuu-MM-dd}",
            t =>
                $"{Number(t.BeforeKg)} kg to {Number(t.AfterKg)} kg in {Number(t.Minutes)} min, drunk {Number(t.DrunkL)} L, "
                + $"eaten {Number(t.EatenKg)} kg, urine {Number(t.UrineL)} L"
        );

    public static ImmutableDictionary<string, string> Of(Clearance clearance) =>
        Facts(
            (
                $"clearance {clearance.HoldKey}",
                $"{clearance.By}, {clearance.Profession}, {clearance.On:uuuu-MM-dd} to {clearance.ExpiresOn:uuuu-MM-dd}: {clearance.WhatWasSaid}"
            )
        );

    /// <summary>The line of audit with what differs between before and after.</summary>
    public static AuditEntry With(
        this AuditEntry entry,
        Guid clientId,
        ImmutableDictionary<string, string> before,
        ImmutableDictionary<string, string> after
    )
    {
        foreach (var field in before.Keys.Union(after.Keys).Order(StringComparer.Ordinal))
        {
            var (was, became) = (
                before.GetValueOrDefault(field, ""),
                after.GetValueOrDefault(field, "")
            );
            if (was == became)
                continue;
            entry.Changes.Add(
                new HealthChange
                {
                    PracticeId = entry.PracticeId,
                    ClientId = clientId,
                    Field = field.Length > 200 ? field[..200] : field,
                    Was = was,
                    Became = became,
                }
            );
        }
        return entry;
    }

    internal static ImmutableDictionary<string, string> Facts(
        params ReadOnlySpan<(string Field, string Value)> facts
    )
    {
        var all = ImmutableDictionary.CreateBuilder<string, string>();
        foreach (var (field, value) in facts)
            all[field] = value;
        return all.ToImmutable();
    }

    internal static string Number(decimal? number) =>
        number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";

    internal static string List<T>(IEnumerable<T> several) =>
        string.Join(", ", several.Select(one => $"{one}").Order(StringComparer.Ordinal));
}
