using System.Collections.Immutable;
using NodaTime;
using Practice.Domain.Clients;

namespace Practice.Domain.Screening;

/// <summary>A client's screening: the answers, when they were given, and who has cleared what since.</summary>
public sealed class ScreeningRecord
{
    /// <summary>Answers older than this are asked again (common practice).</summary>
    public static Period Lifetime { get; } = Period.FromMonths(6);

    private ScreeningRecord() { }

    /// <summary>Key.</summary>
    public Guid Id { get; private set; }

    /// <summary>The practice that owns the record.</summary>
    public Guid PracticeId { get; private set; }

    /// <summary>Who was screened.</summary>
    public Guid ClientId { get; private set; }

    /// <summary>Day on which the questions were last gone through.</summary>
    public LocalDate TakenOn { get; private set; }

    /// <summary>The answers.</summary>
    public ScreeningAnswers Answers { get; private set; } = ScreeningAnswers.None;

    /// <summary>All clearances ever recorded, oldest first.</summary>
    public ImmutableList<Clearance> Clearances { get; private set; } = [];

    /// <summary>Last day on which the answers still count.</summary>
    public LocalDate ExpiresOn => TakenOn + Lifetime;

    /// <summary>Records a first screening.</summary>
    public static ScreeningRecord Take(
        Guid practiceId,
        Guid clientId,
        ScreeningAnswers answers,
        LocalDate on
    )
    {
        var record = new ScreeningRecord
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            ClientId = clientId,
        };
        record.Answer(answers, on);
        return record;
    }

    /// <summary>Records that all questions were gone through again: the screening counts from this day.</summary>
    public void Answer(ScreeningAnswers answers, LocalDate on)
    {
        Correct(answers);
        TakenOn = on;
    }

    /// <summary>Records single answers that were added or corrected: the screening keeps its date.</summary>
    public void Correct(ScreeningAnswers answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        Answers = answers;
    }

    /// <summary>Records a clearance. It counts from its date to its expiry and for its hold alone.</summary>
    /// <exception cref="ArgumentException">
    /// It does not say who cleared it and what was said, or expires before it begins.
    /// </exception>
    public void Clear(Clearance clearance)
    {
        ArgumentNullException.ThrowIfNull(clearance);
        if (string.IsNullOrWhiteSpace(clearance.By))
            throw new ArgumentException("A clearance says who gave it.", nameof(clearance));
        if (string.IsNullOrWhiteSpace(clearance.WhatWasSaid))
            throw new ArgumentException("A clearance says what was said.", nameof(clearance));
        if (clearance.ExpiresOn < clearance.On)
            throw new ArgumentException(
                "A clearance expires on its own day or later.",
                nameof(clearance)
            );
        Clearances = Clearances.Add(clearance);
    }

    /// <summary>What the screening means on a day, its own age included.</summary>
    /// <param name="client">The client as she is now.</param>
    /// <param name="today">The day.</param>
    /// <param name="expectedFinish">How long the race is expected to take; null when no race is in view.</param>
    public ScreeningOutcome Outcome(Client client, LocalDate today, Duration? expectedFinish = null)
    {
        var outcome = ScreeningRules.Evaluate(Answers, client, today, expectedFinish);
        return today <= ExpiresOn
            ? outcome
            : outcome with
            {
                Holds = [ScreeningRules.Expired(TakenOn), .. outcome.Holds],
            };
    }

    /// <summary>The holds that stand on a day: while there is one, nothing is issued.</summary>
    public ImmutableArray<Hold> StandingHolds(
        Client client,
        LocalDate today,
        Duration? expectedFinish = null
    ) => Outcome(client, today, expectedFinish).StandingHolds(Clearances, today);
}
