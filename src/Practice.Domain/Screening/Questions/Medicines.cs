namespace Practice.Domain.Screening.Questions;

/// <summary>Medicines that change what a plan may hold. Substances and classes, never brand names.</summary>
public static class Medicines
{
    /// <summary>Insulin.</summary>
    public static Choice Insulin { get; } = new("insulin", "Insulin");

    /// <summary>Sulfonylureas and glinides.</summary>
    public static Choice SulfonylureaOrGlinide { get; } =
        new(
            "sulfonylurea-or-glinide",
            "Diabetes tablets that release insulin: a sulfonylurea (such as gliclazide) or a glinide"
        );

    /// <summary>SGLT2 inhibitors.</summary>
    public static Choice Sglt2Inhibitor { get; } =
        new("sglt2-inhibitor", "An SGLT2 inhibitor (a name ending in -gliflozin)");

    /// <summary>GLP-1 agonists.</summary>
    public static Choice Glp1Agonist { get; } =
        new(
            "glp1-agonist",
            "A GLP-1 medicine for diabetes or weight (such as semaglutide or liraglutide)"
        );

    /// <summary>Anti-inflammatory painkillers.</summary>
    public static Choice Nsaid { get; } =
        new("nsaid", "Anti-inflammatory painkillers (such as ibuprofen, naproxen or diclofenac)");

    /// <summary>Medicines that shift sodium, potassium and the response to heat.</summary>
    public static Choice DiureticOrPressureTablet { get; } =
        new(
            "diuretic-or-pressure-tablet",
            "A water tablet (diuretic) or a blood-pressure tablet ending in -pril or -sartan"
        );

    /// <summary>Thiazides.</summary>
    public static Choice Thiazide { get; } =
        new("thiazide", "A thiazide (such as hydrochlorothiazide or indapamide)");

    /// <summary>SSRIs.</summary>
    public static Choice Ssri { get; } =
        new("ssri", "An SSRI antidepressant (such as sertraline or citalopram)");

    /// <summary>Fluvoxamine, the SSRI that stops the breakdown of caffeine.</summary>
    public static Choice Fluvoxamine { get; } = new("fluvoxamine", "Fluvoxamine");

    /// <summary>Desmopressin.</summary>
    public static Choice Desmopressin { get; } = new("desmopressin", "Desmopressin");

    /// <summary>Carbamazepine.</summary>
    public static Choice Carbamazepine { get; } = new("carbamazepine", "Carbamazepine");

    /// <summary>Lithium.</summary>
    public static Choice Lithium { get; } = new("lithium", "Lithium");

    /// <summary>Ciprofloxacin.</summary>
    public static Choice Ciprofloxacin { get; } = new("ciprofloxacin", "Ciprofloxacin");

    /// <summary>Cimetidine.</summary>
    public static Choice Cimetidine { get; } = new("cimetidine", "Cimetidine");

    /// <summary>Combined oral contraceptives.</summary>
    public static Choice CombinedPill { get; } =
        new("combined-pill", "The combined contraceptive pill");

    /// <summary>Theophylline.</summary>
    public static Choice Theophylline { get; } =
        new("theophylline", "Theophylline or aminophylline");

    /// <summary>Clozapine.</summary>
    public static Choice Clozapine { get; } = new("clozapine", "Clozapine");

    /// <summary>MAO inhibitors.</summary>
    public static Choice MaoInhibitor { get; } =
        new("mao-inhibitor", "An MAO inhibitor (such as phenelzine or moclobemide)");

    /// <summary>Stimulants.</summary>
    public static Choice Stimulant { get; } =
        new("stimulant", "A stimulant (such as methylphenidate or pseudoephedrine)");

    /// <summary>Warfarin.</summary>
    public static Choice Warfarin { get; } = new("warfarin", "Warfarin");

    /// <summary>Levothyroxine.</summary>
    public static Choice Levothyroxine { get; } = new("levothyroxine", "Levothyroxine");

    /// <summary>Iron.</summary>
    public static Choice Iron { get; } = new("iron", "Iron tablets");

    /// <summary>Tetracyclines.</summary>
    public static Choice Tetracycline { get; } =
        new("tetracycline", "A tetracycline antibiotic (a name ending in -cycline)");

    /// <summary>Beta-blockers.</summary>
    public static Choice BetaBlocker { get; } =
        new("beta-blocker", "A beta-blocker (a name ending in -olol)");

    /// <summary>Opioids.</summary>
    public static Choice Opioid { get; } =
        new("opioid", "An opioid painkiller (such as codeine or tramadol)");

    /// <summary>Anticholinergics.</summary>
    public static Choice Anticholinergic { get; } =
        new("anticholinergic", "An anticholinergic (such as oxybutynin or hyoscine)");

    /// <summary>Antihistamines.</summary>
    public static Choice Antihistamine { get; } =
        new("antihistamine", "An antihistamine for allergy, travel sickness or sleep");

    /// <summary>Which medicines.</summary>
    public static Question Taken { get; } =
        Question.AnyOf(
            "medicines",
            "Which of these do you take, also now and then?",
            [
                Insulin,
                SulfonylureaOrGlinide,
                Sglt2Inhibitor,
                Glp1Agonist,
                Nsaid,
                DiureticOrPressureTablet,
                Thiazide,
                Ssri,
                Fluvoxamine,
                Desmopressin,
                Carbamazepine,
                Lithium,
                Ciprofloxacin,
                Cimetidine,
                CombinedPill,
                Theophylline,
                Clozapine,
                MaoInhibitor,
                Stimulant,
                Warfarin,
                Levothyroxine,
                Iron,
                Tetracycline,
                BetaBlocker,
                Opioid,
                Anticholinergic,
                Antihistamine,
            ]
        ) with
        {
            Help =
                "Tick all that apply, whatever they were prescribed for. The leaflet names the substance.",
        };

    /// <summary>Medicines and supplements beyond the list.</summary>
    public static Question Others { get; } =
        Question.InWords("other-medicines", "Any other medicine or supplement?");

    /// <summary>The section.</summary>
    public static QuestionSection Section { get; } =
        new("medicines", "Medicines and supplements", [Taken, Others]);
}
