using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Evidence;

namespace Practice.Domain.Screening;

/// <summary>What it takes to lift a hold.</summary>
public enum LiftedBy
{
    /// <summary>A clearance that names a professional and her profession.</summary>
    Professional,

    /// <summary>The practitioner's own word on how it was handled.</summary>
    Practitioner,

    /// <summary>Only the missing answers: no clearance counts.</summary>
    Answers,
}

/// <summary>Blocks issuing a plan until it is lifted.</summary>
/// <param name="Key">Stable key, such as <c>diabetes-insulin</c>.</param>
/// <param name="Title">Short name.</param>
/// <param name="Reason">Why it blocks and what clearance is needed, from whom.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="LiftedBy">What it takes to lift it.</param>
public sealed record Hold(
    string Key,
    string Title,
    string Reason,
    Source Source,
    LiftedBy LiftedBy = LiftedBy.Professional
)
{
    /// <summary>Whether not even a draft is built while it stands, since the tool cannot check the foods.</summary>
    public bool ForbidsDrafting { get; init; }

    /// <summary>Whether a clearance lifts this hold on a day.</summary>
    public bool IsLiftedBy(Clearance clearance, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(clearance);
        return clearance.HoldKey == Key
            && clearance.IsValidOn(day)
            && LiftedBy switch
            {
                LiftedBy.Professional => clearance.NamesAProfessional,
                LiftedBy.Practitioner => true,
                _ => false,
            };
    }
}

/// <summary>A word that lifts one hold: a professional's, or the practitioner's own where that is enough.</summary>
/// <param name="HoldKey">Key of the hold.</param>
/// <param name="By">Who cleared it.</param>
/// <param name="Profession">
/// The profession in which she did, such as <c>diabetologist</c>; empty when it is the practitioner's own word.
/// </param>
/// <param name="On">Date of the clearance.</param>
/// <param name="ExpiresOn">Last day it counts.</param>
/// <param name="WhatWasSaid">Scope and conditions.</param>
public sealed record Clearance(
    string HoldKey,
    string By,
    string Profession,
    LocalDate On,
    LocalDate ExpiresOn,
    string WhatWasSaid
)
{
    /// <summary>Whether it says who cleared the hold and in which profession.</summary>
    public bool NamesAProfessional =>
        !string.IsNullOrWhiteSpace(By) && !string.IsNullOrWhiteSpace(Profession);

    /// <summary>Whether it counts on a day: given, and not expired.</summary>
    public bool IsValidOn(LocalDate day) => On <= day && day <= ExpiresOn;
}

/// <summary>A text that goes on screen and paper.</summary>
/// <param name="Key">Stable key.</param>
/// <param name="Text">What to say, in plain words and without numbers with units.</param>
/// <param name="ForClient">Whether the client reads it too, or only the practitioner.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record Caution(string Key, string Text, bool ForClient, Source Source);

/// <summary>What the answers mean.</summary>
/// <param name="Holds">What blocks issuing, cleared or not.</param>
/// <param name="Cautions">What is said on screen and paper.</param>
/// <param name="Adjustments">What changes by itself.</param>
public sealed record ScreeningOutcome(
    ImmutableArray<Hold> Holds,
    ImmutableArray<Caution> Cautions,
    Adjustments Adjustments
)
{
    /// <summary>The holds that no clearance lifts on a day: while there is one, nothing is issued.</summary>
    public ImmutableArray<Hold> StandingHolds(IEnumerable<Clearance> clearances, LocalDate day)
    {
        var given = clearances.ToList();
        return [.. Holds.Where(hold => !given.Any(c => hold.IsLiftedBy(c, day)))];
    }
}
