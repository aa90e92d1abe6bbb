namespace Practice.Domain.Evidence;

/// <summary>Where the screening rules come from.</summary>
public static partial class Sources
{
    /// <summary>Levels of screening and what dietitians do about them.</summary>
    public static Source DieteticPractice { get; } =
        Habit("dietetic-practice", "Common practice in dietetics; no source is claimed.");

    /// <summary>Physiology and pharmacology that is generally known and was not looked up.</summary>
    public static Source ClinicalKnowledge { get; } =
        new(
            "clinical-knowledge",
            "General clinical knowledge, to be checked by a physician or pharmacist.",
            Provenance.FromMemory
        );

    /// <summary>Low energy availability (REDs): signs and lights.</summary>
    public static Source Reds2023 { get; } =
        Published(
            "reds-2023",
            "Mountjoy et al. 2023. Br J Sports Med 57:1073 (IOC consensus); Stellingwerff et al. 2023. Br J Sports Med "
                + "57:1109 (clinical tool, read in part)."
        );

    /// <summary>Exercise in type 1 diabetes.</summary>
    public static Source Riddell2017 { get; } =
        Published(
            "riddell-2017",
            "Riddell et al. 2017. Lancet Diabetes Endocrinol 5:377 (summaries)."
        );

    /// <summary>Ketoacidosis on SGLT2 inhibitors.</summary>
    public static Source Sglt2Statement { get; } =
        Published(
            "sglt2-statement",
            "AACE/ACE position statement on SGLT2 inhibitors and ketoacidosis (secondary account)."
        );

    /// <summary>Ibuprofen in an 80 km race: kidney injury in 52 % against 34 %.</summary>
    public static Source Lipman2017 { get; } =
        Published("lipman-2017", "Lipman et al. 2017. Emerg Med J 34:637-642 (abstract).");

    /// <summary>Low blood sodium in exercise.</summary>
    public static Source HewButler2015 { get; } =
        Published(
            "hew-butler-2015",
            "Hew-Butler et al. 2015. Clin J Sport Med 25:303-320, and reviews of it."
        );

    /// <summary>Lactose: most who digest it poorly bear 12 g at once, some react to less than 6 g.</summary>
    public static Source EfsaLactose2010 { get; } =
        Published("efsa-2010-lactose", "EFSA 2010. EFSA Journal 8(9):1777 (abstract).");

    /// <summary>Caffeine: 200 mg at once, 400 mg a day, 200 mg a day in pregnancy and breastfeeding.</summary>
    public static Source EfsaCaffeine2015 { get; } =
        Published("efsa-2015-caffeine", "EFSA 2015. EFSA Journal 13(5):4102 (abstract).");

    /// <summary>Adolescent athletes: ordinary food first, no reliance on products or supplements.</summary>
    public static Source Desbrow2014 { get; } =
        Published(
            "desbrow-2014",
            "Desbrow et al. 2014. Int J Sport Nutr Exerc Metab 24:570-584 (abstract)."
        );

    /// <summary>Fluvoxamine stretches the half-life of caffeine from 4.9 to 56 h.</summary>
    public static Source CulmMerdek2005 { get; } =
        Published("culm-merdek-2005", "Culm-Merdek et al. 2005 (abstract).");

    /// <summary>Cimetidine cuts the clearance of caffeine by 31 to 42 %.</summary>
    public static Source CaffeineInteractions { get; } =
        Published("caffeine-interactions", "Table of caffeine interactions in a review of 2023.");

    /// <summary>The fourteen groups of allergens.</summary>
    public static Source AllergenGroups { get; } =
        Published("eu-1169-2011-annex-ii", "Regulation (EU) No 1169/2011, Annex II.");

    /// <summary>Hereditary fructose intolerance: low glucose, harm to liver and kidneys.</summary>
    public static Source FructoseIntolerance { get; } =
        Published(
            "hereditary-fructose-intolerance",
            "Clinical descriptions of hereditary fructose intolerance (secondary accounts)."
        );

    /// <summary>Dumping after stomach surgery: within 1 h, and low glucose at 1 to 3 h.</summary>
    public static Source Dumping { get; } =
        Published("dumping", "Clinical descriptions of dumping (secondary accounts).");

    /// <summary>Low FODMAP: fewer symptoms in athletes who have them.</summary>
    public static Source LowFodmap { get; } =
        Published(
            "low-fodmap",
            "Lis et al. 2018. Med Sci Sports Exerc 50:116-123; Wiffin et al. 2019. J Int Soc Sports Nutr 16:1 (abstracts)."
        );
}
