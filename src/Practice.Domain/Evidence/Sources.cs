namespace Practice.Domain.Evidence;

/// <summary>
/// The bibliography: one member a source. <see cref="Provenance.Published"/> means that the figure used was read in
/// the source itself or in a secondary account of it.
/// </summary>
public static partial class Sources
{
    /// <summary>Carbohydrate, protein and the pre-event meal for athletes: the guideline ranges.</summary>
    public static Source Thomas2016 { get; } =
        Published(
            "thomas-2016",
            "Thomas, Erdman, Burke 2016. J Acad Nutr Diet 116:501-528; Med Sci Sports Exerc 48:543-568."
        );

    /// <summary>Review that restates the 7-12 g/kg of general fuelling and the pre-event meal.</summary>
    public static Source Wallis2022 { get; } =
        Published("wallis-2022", "Wallis, Podlogar 2022, review.");

    /// <summary>Loading in women: enough energy and more than 8 g/kg.</summary>
    public static Source Sedlock2008 { get; } =
        Published("sedlock-2008", "Sedlock 2008. Curr Sports Med Rep 7:209 (abstract).");

    /// <summary>Four days at the same share of energy: a rise in men, none in women.</summary>
    public static Source Tarnopolsky1995 { get; } =
        Published("tarnopolsky-1995", "Tarnopolsky et al. 1995, read in a summary.");

    /// <summary>One day at 10 g/kg without depletion: 95 to 180 mmol/kg wet weight.</summary>
    public static Source Bussau2002 { get; } =
        Published("bussau-2002", "Bussau et al. 2002. Eur J Appl Physiol 87:290-295.");

    /// <summary>One day at 12 g/kg lean mass after a sprint: 109 to 198 mmol/kg wet weight.</summary>
    public static Source Fairchild2002 { get; } =
        Published(
            "fairchild-2002",
            "Fairchild et al. 2002. Med Sci Sports Exerc 34:980-986 (abstract)."
        );

    /// <summary>Muscle glycogen at rest over 181 studies.</summary>
    public static Source Areta2018 { get; } =
        Published(
            "areta-2018",
            "Areta, Hopkins 2018. Sports Med 48:2091-2102. doi:10.1007/s40279-018-0941-1."
        );

    /// <summary>Moderate loading equals the classic protocol with depletion.</summary>
    public static Source Sherman1981 { get; } =
        Published("sherman-1981", "Sherman WM et al. 1981. Int J Sports Med 2:114-118.");

    /// <summary>72 h at 12 g/kg: glycogen and body water.</summary>
    public static Source Shiose2016 { get; } =
        Published("shiose-2016", "Shiose et al. 2016, read in a secondary account.");

    /// <summary>Of 479 g eaten, 346 g were stored.</summary>
    public static Source Acheson1982 { get; } =
        Published("acheson-1982", "Acheson et al. 1982, read in a secondary account.");

    /// <summary>Skeletal muscle: 38.4 % of body mass in men, 30.6 % in women.</summary>
    public static Source Janssen2000 { get; } =
        Published("janssen-2000", "Janssen et al. 2000, read in a secondary account.");

    /// <summary>Glycogen of the liver.</summary>
    public static Source Murray2018 { get; } =
        Published("murray-2018", "Murray, Rosenbloom 2018. Nutr Rev 76:243.");

    /// <summary>3-4 g of water with each gram of glycogen.</summary>
    public static Source Olsson1970 { get; } =
        Published("olsson-1970", "Olsson, Saltin 1970, read in a secondary account.");

    /// <summary>At least 3 g of water with each gram of glycogen.</summary>
    public static Source FernandezElias2015 { get; } =
        Published("fernandez-elias-2015", "Fernández-Elías et al. 2015 (abstract).");

    /// <summary>Performance over a set distance, 2-3 % better in events over 90 min.</summary>
    public static Source Hawley1997 { get; } =
        new(
            "hawley-1997",
            "Hawley et al. 1997. Sports Med 24:73-81. The 2-3 % written from memory.",
            Provenance.FromMemory
        );

    /// <summary>Energy of running: 1 kcal per kg and km; carbohydrate share against intensity.</summary>
    public static Source Rapoport2010 { get; } =
        Published(
            "rapoport-2010",
            "Rapoport 2010. PLoS Comput Biol 6(10):e1000960. doi:10.1371/journal.pcbi.1000960. Carbohydrate share: quadratic fit to its figure 1, from an open equation library."
        );

    /// <summary>Oxygen uptake of running outdoors.</summary>
    public static Source Leger1984 { get; } =
        Published("leger-1984", "Léger, Mercier 1984. Sports Med 1:270-277 (abstract).");

    /// <summary>Sustainable intensity and equivalent performances.</summary>
    public static Source Daniels1979 { get; } =
        Published("daniels-1979", "Daniels, Gilbert 1979. Oxygen Power.");

    /// <summary>Time grows with distance to the power 1.06.</summary>
    public static Source Riegel1981 { get; } =
        Published("riegel-1981", "Riegel 1977; 1981, Am Sci 69:285-290. Exponent 1.06.");

    /// <summary>Marathon prediction for recreational runners from one race and weekly distance.</summary>
    public static Source Vickers2016 { get; } =
        Published("vickers-2016", "Vickers, Vertosick 2016. BMC Sports Sci Med Rehabil 8:26.");

    /// <summary>Resting energy from mass, height, age and sex.</summary>
    public static Source Mifflin1990 { get; } =
        Published("mifflin-1990", "Mifflin et al. 1990. Am J Clin Nutr 51:241-247.");

    /// <summary>Resting energy from fat-free mass.</summary>
    public static Source Cunningham1980 { get; } =
        Published("cunningham-1980", "Cunningham 1980. Am J Clin Nutr 33:2372-2374.");

    /// <summary>Lean body mass from mass, height and sex.</summary>
    public static Source Boer1984 { get; } =
        Published("boer-1984", "Boer 1984. Am J Physiol 247:F632-F636.");

    /// <summary>Protein of the general population, 0.83 g/kg.</summary>
    public static Source EfsaProtein2012 { get; } =
        Published("efsa-2012-protein", "EFSA. 2012. EFSA Journal 10(2):2557.");

    /// <summary>Energy of nutrients on labels.</summary>
    public static Source Regulation1169 { get; } =
        new(
            "eu-1169-2011",
            "Regulation (EU) No 1169/2011, Annex XIV. Factors written from memory.",
            Provenance.FromMemory
        );

    /// <summary>Less fibre for four days: fewer stools, about half a kilogram lighter.</summary>
    public static Source Foo2022 { get; } =
        Published(
            "foo-2022",
            "Foo et al. 2022. Int J Sport Nutr Exerc Metab 32:256-264 (abstract)."
        );

    /// <summary>Fibre for athletes: about 30 g a day in the long run.</summary>
    public static Source Mancin2025 { get; } =
        Published("mancin-2025", "Mancin, Burke, Rollo 2025. Sports Med (abstract).");

    /// <summary>Sodium of the general population: less than 2 g (WHO) or 2.3 g (US) a day.</summary>
    public static Source SodiumGuidance { get; } =
        Published(
            "sodium-population",
            "WHO, less than 2 g sodium a day; US guidance, less than 2.3 g a day; both for the general population."
        );

    private static Source Published(string key, string citation) =>
        new(key, citation, Provenance.Published);
}
