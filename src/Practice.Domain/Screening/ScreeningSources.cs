using Practice.Domain.Evidence;

namespace Practice.Domain.Screening;

/// <summary>Where the screening rules come from.</summary>
internal static class ScreeningSources
{
    /// <summary>What dietitians do; no source is claimed.</summary>
    public static Source CommonPractice { get; } =
        new("common-practice", "Common practice in dietetics", Provenance.CommonPractice);

    /// <summary>Pharmacology that is generally known and was not looked up.</summary>
    public static Source GeneralKnowledge { get; } =
        new(
            "general-knowledge",
            "General clinical knowledge, to be checked by a pharmacist or physician",
            Provenance.FromMemory
        );

    /// <summary>A design choice of this tool.</summary>
    public static Source OwnRule { get; } =
        new("own-rule", "A rule of this tool, not published", Provenance.OwnRule);

    public static Source Reds { get; } =
        new(
            "mountjoy-2023",
            "Mountjoy et al. 2023, Br J Sports Med 57:1073 (IOC consensus on REDs), with Stellingwerff et al. "
                + "2023, Br J Sports Med 57:1109 (clinical assessment tool)",
            Provenance.Published
        );

    public static Source Riddell2017 { get; } =
        new(
            "riddell-2017",
            "Riddell et al. 2017, Lancet Diabetes Endocrinol 5:377 (exercise in type 1 diabetes)",
            Provenance.Published
        );

    public static Source Sglt2Statement { get; } =
        new(
            "aace-ace-sglt2",
            "AACE/ACE position statement on SGLT2 inhibitors and ketoacidosis, in a secondary account",
            Provenance.Published
        );

    public static Source Lipman2017 { get; } =
        new(
            "lipman-2017",
            "Lipman et al. 2017, Emerg Med J 34:637-42 (ibuprofen in an 80 km race)",
            Provenance.Published
        );

    public static Source HewButler2015 { get; } =
        new(
            "hew-butler-2015",
            "Hew-Butler et al. 2015, Clin J Sport Med 25:303-20 (exercise-associated hyponatraemia)",
            Provenance.Published
        );

    public static Source SodiumGuidelines { get; } =
        new(
            "who-us-sodium",
            "WHO guideline on sodium for adults and the US dietary guidelines, in secondary accounts",
            Provenance.Published
        );

    public static Source EfsaLactose { get; } =
        new("efsa-2010-lactose", "EFSA Journal 2010;8(9):1777 (lactose)", Provenance.Published);

    public static Source EfsaCaffeine { get; } =
        new("efsa-2015-caffeine", "EFSA Journal 2015;13(5):4102 (caffeine)", Provenance.Published);

    public static Source EfsaProtein { get; } =
        new("efsa-2012-protein", "EFSA Journal 2012;10(2):2557 (protein)", Provenance.Published);

    public static Source Guest2021 { get; } =
        new(
            "guest-2021",
            "Guest et al. 2021, J Int Soc Sports Nutr 18:1 (caffeine)",
            Provenance.Published
        );

    public static Source Desbrow2014 { get; } =
        new(
            "desbrow-2014",
            "Desbrow et al. 2014, Int J Sport Nutr Exerc Metab 24:570-84 (adolescent athletes)",
            Provenance.Published
        );

    public static Source CulmMerdek2005 { get; } =
        new(
            "culm-merdek-2005",
            "Culm-Merdek et al. 2005 (fluvoxamine and caffeine)",
            Provenance.Published
        );

    public static Source CaffeineInteractions { get; } =
        new(
            "caffeine-interactions-2023",
            "Table of caffeine interactions in a 2023 review (cimetidine), ciprofloxacin alike",
            Provenance.Published
        );

    public static Source EuAllergens { get; } =
        new(
            "eu-1169-2011",
            "Regulation (EU) 1169/2011, Annex II (allergens)",
            Provenance.Published
        );

    public static Source FructoseIntolerance { get; } =
        new(
            "hereditary-fructose-intolerance",
            "Clinical descriptions of hereditary fructose intolerance, in secondary accounts",
            Provenance.Published
        );

    public static Source Dumping { get; } =
        new(
            "dumping-syndrome",
            "Clinical descriptions of dumping after stomach surgery, in secondary accounts",
            Provenance.Published
        );

    public static Source LowFodmap { get; } =
        new(
            "lis-2018",
            "Lis et al. 2018, Med Sci Sports Exerc 50:116-23, and Wiffin et al. 2019, J Int Soc Sports Nutr 16:1",
            Provenance.Published
        );

    public static Source GlycogenWater { get; } =
        new(
            "fernandez-elias-2015",
            "Fernández-Elías et al. 2015 (water stored with glycogen)",
            Provenance.Published
        );
}
