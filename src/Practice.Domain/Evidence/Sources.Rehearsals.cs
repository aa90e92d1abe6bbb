namespace Practice.Domain.Evidence;

/// <content>Where the rules of rehearsals come from: gut symptoms, suspect foods, escalation.</content>
public static partial class Sources
{
    /// <summary>The 0 to 10 scale of gut symptoms. Lower symptoms repeat poorly between tests (rank correlation 0.204).</summary>
    public static Source Gaskell2019 { get; } =
        Published(
            "gaskell-2019",
            "Gaskell, Snipe, Costa 2019. Int J Sport Nutr Exerc Metab 29:411-419. doi:10.1123/ijsnem.2018-0215 (abstract)."
        );

    /// <summary>Which symptoms are asked and what their scores mean in words.</summary>
    public static Source SymptomAnchors { get; } =
        new(
            "symptom-anchors",
            "Items and anchors of the symptom scale: 1 to 4 mild, 5 to 9 severe, 10 forces a stop. To be checked against the instrument.",
            Provenance.FromMemory
        );

    /// <summary>A score of 5 or more counts as moderate to severe.</summary>
    public static Source Wilson2017 { get; } =
        Published(
            "wilson-2017",
            "Wilson 2017 (abstract): scores of 5 or more of 10 as moderate to severe."
        );

    /// <summary>Independent causes that each may bring the effect about.</summary>
    public static Source Pearl1988 { get; } =
        new(
            "pearl-1988",
            "Pearl 1988. Probabilistic Reasoning in Intelligent Systems: the noisy-OR. Cited from memory.",
            Provenance.FromMemory
        );

    /// <summary>Weak priors keep a logistic regression finite where the data separate.</summary>
    public static Source Gelman2008 { get; } =
        Published("gelman-2008", "Gelman et al. 2008. Ann Appl Stat 2:1360-1383 (abstract).");

    /// <summary>When to rehearse, and what comes after a clean or a bad trial.</summary>
    public static Source RehearsalHabit { get; } =
        Habit(
            "rehearsal-habit",
            "Rehearse once or twice, two to four weeks out, not in the last 10 days, next to a long run; partial first, then full; one change between trials."
        );

    /// <summary>What follows a failed trial.</summary>
    public static Source Escalation { get; } =
        Habit(
            "rehearsal-escalation",
            "Partial clean: go to full. Full clean: keep. Full failed: a quarter less and again after a week. Two fails at one amount: the last clean amount, even below 10 g/kg."
        );

    /// <summary>No rehearsal in a bad week.</summary>
    public static Source NotInABadWeek { get; } =
        Habit(
            "rehearsal-bad-week",
            "No rehearsal in the same week as a sickness, a hard race or a very hot spell."
        );

    /// <summary>Warning signs go to a doctor.</summary>
    public static Source WarningSigns { get; } =
        Habit(
            "rehearsal-warning-signs",
            "Blood, collapse, repeated vomiting or chest pain are matters for a doctor, never questions of food."
        );

    /// <summary>When a rehearsal counts as loaded.</summary>
    public static Source Compliance { get; } =
        Own(
            "own-compliance",
            "Nine tenths of the planned carbohydrate or more: met; seven to nine tenths: partly; less, or below 7 g/kg in a full rehearsal: not loaded."
        );

    /// <summary>What the worst score of a trial means.</summary>
    public static Source TrialVerdicts { get; } =
        Own(
            "own-trial-verdicts",
            "Worst score up to 2: pass; 3 or 4: adapt; 5 or more, vomiting or a stop: fail."
        );

    /// <summary>How likely a food is a trigger before any trial, how often a trigger shows, and symptoms without food.</summary>
    public static Source SuspectAssumptions { get; } =
        Own(
            "own-suspect-assumptions",
            "Prior 0.10 (0.20 by traits, 0.30 past trouble, 0.03 eaten weekly without trouble); a full dose of a trigger shows in 0.7 of trials; symptoms without food 0.10, and 0.10 more for each strain, at most 0.5."
        );

    /// <summary>Which foods are richer in what troubles guts.</summary>
    public static Source TroubleTraits { get; } =
        Own(
            "own-trouble-traits",
            "Rich in fibre: 6 g in 100 g, or high residue; free fructose 1 g above glucose; lactose 2 g; fat 15 g; polyols or rich in fermentable sugars by trait."
        );

    /// <summary>What a probability is called.</summary>
    public static Source SuspectWords { get; } =
        Own(
            "own-suspect-words",
            "0.80 likely; 0.50 suspect; 0.20 possible; at most 0.05 after two clean full doses: cleared; else unknown."
        );

    /// <summary>How far a proposal goes.</summary>
    public static Source ProposalSteps { get; } =
        Own(
            "own-proposal-steps",
            "Drinks' share up by 10 points to at most 50 %; fibre down to 10 g; a seventh sitting, else a sitting's weight down by 15 %."
        );

    /// <summary>Two weeks of running with 90 g/h: less gut discomfort, better run.</summary>
    public static Source Miall2018 { get; } =
        Published("miall-2018", "Miall et al. 2018. Scand J Med Sci Sports 28:630-640 (abstract).");

    /// <summary>Steps of fuelling on the run.</summary>
    public static Source RunFuelSteps { get; } =
        Own(
            "own-run-fuel-steps",
            "10 g/h more after a clean session, to 90 g/h; hold at scores of 3 and 4; 15 g/h less from 5 on."
        );

    /// <summary>What a reviewed rehearsal says about the rate that the gut tolerates in the race.</summary>
    public static Source RehearsedGut { get; } =
        Own(
            "own-rehearsed-gut",
            "The highest rate passed counts as tolerated; after trouble 10 g/h below the next rate to try. A clean trial was passed with no score above 2; three at the rate make a well-trained gut."
        );
}
