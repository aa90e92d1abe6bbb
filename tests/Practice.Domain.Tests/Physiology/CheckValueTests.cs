using System.Collections.Immutable;
using System.Globalization;
using CsvHelper;
using NodaTime;
using Practice.Domain.Clients;
using Practice.Domain.Physiology;

namespace Practice.Domain.Tests.Physiology;

/// <summary>
/// Published and derived values that each relation must give: value, tolerance and source stand in
/// <c>check-values.csv</c>; here stands only which relation takes which inputs.
/// </summary>
public class CheckValueTests
{
    private static readonly Dictionary<string, Row> Rows = Read();

    private static readonly Dictionary<string, Func<Inputs, double>> Relations = new()
    {
        ["running-energy"] = i => RunningEnergy.NetKcal(i["mass_kg"], i["distance_km"]),
        ["running-vo2"] = i => RunningIntensity.OxygenUptake(i["speed_km_h"]),
        ["marathon-intensity"] = i =>
            RunningIntensity.Relative(42.195 / (i["t_s"] / 3600), i["vo2max"]),
        ["daniels-vo2"] = i => DanielsGilbert.OxygenUptake(i["v_m_min"]),
        ["daniels-share"] = i => DanielsGilbert.SustainableShare(i["t_min"]),
        ["vdot"] = i => DanielsGilbert.Vdot(i["d_m"], Duration.FromMinutes(i["t_min"])),
        ["daniels-time"] = i => DanielsGilbert.TimeAt(i["vdot"], i["d_m"]).TotalSeconds,
        ["riegel"] = i =>
            Riegel
                .Time(Duration.FromSeconds(i["t_s"]), i["d1_m"] / 1000, i["d2_m"] / 1000)
                .TotalSeconds,
        ["vickers"] = i =>
            VickersVertosick
                .Marathon(
                    Duration.FromSeconds(i["t_s"]),
                    i["d1_m"] / 1000,
                    i["miles_per_week"] * 1.609344
                )
                .TotalSeconds,
        ["carbohydrate-share"] = i => CarbohydrateShare.At(i["x"]),
        ["mmol-to-grams"] = i => MuscleGlycogen.Grams(i["mmol"], muscleKg: 1),
        ["mmol-to-kcal"] = i => KcalPerKg(i["mmol_kg"]),
        ["kcal-to-mmol"] = i => i["kcal_kg"] / KcalPerKg(1),
        ["dry-to-wet"] = i => MuscleGlycogen.FromDry(i["mmol_kg_dw"]),
        ["usual-dry"] = i =>
            462
            + (MuscleGlycogen.OnUsualDiet(i["vo2max"]) - MuscleGlycogen.Usual)
                / MuscleGlycogen.FromDry(1),
        ["loading"] = i => GlycogenLoading.Expected.At(i["G0"], i["C_g_kg_d"], i["t_h"]),
        ["loading-half-time"] = _ => GlycogenLoading.Expected.HalfTimeHours,
        ["loading-first-rate"] = i =>
            (GlycogenLoading.Expected.At(i["G0"], 10, 1e-6) - i["G0"]) / 1e-6,
        ["loading-plateau"] = i => GlycogenLoading.Expected.PlateauAt(i["C_g_kg_d"]),
        ["muscle-gain"] = i => GlycogenStores.MuscleG(i["mass_kg"], Sex.Male, i["G1"] - i["G0"]),
        ["mass-gain"] = i => LoadingMassGain.Kg(i["delta_glycogen_g"], i["water_per_g"]),
        ["most-stored"] = i => StorageLimit.MostStoredG(i["mass_kg"], i["C_g_kg_d"], i["t_h"]),
        ["usual-stores"] = i =>
            GlycogenStores.MuscleG(i["mass_kg"], Sex.Male, i["c"]) + GlycogenStores.UsualLiverG,
        ["loaded-stores"] = i =>
            GlycogenStores.MuscleG(i["mass_kg"], Sex.Male, i["c"]) + GlycogenStores.LoadedLiverG,
        ["pre-race-meal"] = i =>
            (double)PreRaceMeal.CarbohydrateG((decimal)i["mass_kg"], (decimal)i["hours_before"]),
        ["carbohydrate-energy"] = i => (double)FoodEnergy.Kcal((decimal)i["g"], 0, 0, 0),
        ["food-energy"] = i =>
            (double)
                FoodEnergy.Kcal(
                    (decimal)i["carb_avail_g"],
                    (decimal)i["protein_g"],
                    (decimal)i["fat_g"],
                    (decimal)i["fibre_g"]
                ),
        ["mifflin"] = i =>
            RestingEnergy.Mifflin(i["mass_kg"], i["height_cm"], (int)i["age"], i.Sex),
        ["cunningham"] = i => RestingEnergy.Cunningham(i["ffm_kg"]),
        ["fat-free-from-fat"] = i => FatFreeMass.FromBodyFat(i["mass_kg"], i["fat_pct"]),
        ["glycogen-store"] = i => WallModel.Store(i["leg_frac"], i["leg_kcal_kg"], liverFill: 1),
        ["wall-km"] = i =>
            WallModel.WallKm(WallModel.Store(i["leg_frac"], i["leg_kcal_kg"]), i["x"]),
        ["wall-miles"] = i =>
            WallModel.WallKm(WallModel.Store(i["leg_frac"], i["leg_kcal_kg"]), i["x"]) / 1.609344,
        ["wall-km-at-pace"] = i =>
            WallModel.WallKm(WallModel.Store(i["leg_frac"], i["leg_kcal_kg"]), i.MarathonIntensity),
        ["unfed-intensity"] = i => WallModel.FastestUnfedIntensity(i["S_kcal_kg"], i["D_km"]),
        ["unfed-marathon"] = i =>
            42.195
            / (
                WallModel.FastestUnfedIntensity(WallModel.Store(0.214, 80), 42.195)
                * i["vo2max"]
                / RunningIntensity.OxygenUptake(1)
            )
            * 3600,
        ["missing-carbohydrate"] = i =>
            WallModel.MissingG(
                WallModel.Store(i["leg_frac"], i["leg_kcal_kg"]),
                i.MarathonIntensity,
                42.195,
                i["mass_kg"]
            ),
        ["race-store"] = i =>
            i["mass_kg"] * WallModel.Store(i["leg_frac"], WallModel.LegKcalPerKg(i["leg_mmol"])),
        ["race-use"] = i =>
            i["mass_kg"]
            * 42.195
            * CarbohydrateShare.At(RunningIntensity.Relative(42.195 / i["t_h"], i["vo2max"])),
        ["race-intake"] = i => 4 * RaceFeeding.BurntG(EvenFeeds(i), i["t_h"], i["t_h"]),
        ["burnt-share"] = i => RaceFeeding.BurntShare(i["ingest_g_h"]),
        ["sweat-rate"] = i =>
            (double)
                new SweatTest
                {
                    On = new LocalDate(2026, 4, 5),
                    BeforeKg = (decimal)i["pre_kg"],
                    AfterKg = (decimal)i["post_kg"],
                    DrunkL = (decimal)i["drunk_L"],
                    UrineL = (decimal)i["urine_L"],
                    Minutes = (decimal)i["hours"] * 60,
                }.RateLPerHour,
        ["mass-loss"] = i =>
            (double)
                new SweatTest
                {
                    On = new LocalDate(2026, 4, 5),
                    BeforeKg = (decimal)i["pre_kg"],
                    AfterKg = (decimal)i["post_kg"],
                    Minutes = 60,
                }.LossPercent,
        ["sweat-ceiling"] = i => SweatRate.EvaporatingAllHeat(i["metabolic_W"]),
        ["wbgt"] = i => WetBulbGlobe.Measured(i["Tnwb"], i["Tg"], i["Ta"]),
        ["vapour-pressure"] = i => WetBulbGlobe.VapourPressure(i["Ta"], i["rh"]),
        ["wbgt-estimate"] = i => WetBulbGlobe.Estimated(i["Ta"], i["rh"]),
        ["fat-free-boer"] = i => FatFreeMass.Boer(i["mass_kg"], i["height_cm"], i.Sex),
    };

    public static TheoryData<string> Checks => new(Rows.Keys);

    [Theory]
    [MemberData(nameof(Checks))]
    public void A_relation_gives_the_value_of_its_source(string check)
    {
        var row = Rows[check];
        var value = Relations[row.Relation](new Inputs(row.Inputs));
        Assert.InRange(value, row.Expected - row.Tolerance, row.Expected + row.Tolerance);
    }

    [Fact]
    public void Each_relation_is_checked_and_each_value_names_its_source()
    {
        Assert.Equal(
            Relations.Keys.Order(),
            Rows.Values.Select(r => r.Relation).Distinct().Order()
        );
        Assert.All(Rows.Values, row => Assert.NotEmpty(row.Source));
    }

    /// <summary>Feeds every 20 min at a rate, up to the finish.</summary>
    private static ImmutableArray<FuelFeed> EvenFeeds(Inputs i)
    {
        var first = i["first_feed_h"];
        return
        [
            .. Enumerable
                .Range(0, (int)Math.Ceiling((i["t_h"] - first) * 3))
                .Select(n => new FuelFeed(first + n / 3.0, i["rate_g_h"] / 3)),
        ];
    }

    private static double KcalPerKg(double mmolPerKg) =>
        MuscleGlycogen.Grams(mmolPerKg, muscleKg: 1) * (double)FoodEnergy.Carbohydrate;

    private static Dictionary<string, Row> Read()
    {
        var path = Path.Combine(AppContext.BaseDirectory, "Physiology", "check-values.csv");
        using var csv = new CsvReader(new StreamReader(path), CultureInfo.InvariantCulture);
        return csv.GetRecords<Row>().ToDictionary(row => row.Check);
    }

    private sealed record Row(
        string Check,
        string Relation,
        string Inputs,
        double Expected,
        double Tolerance,
        string Unit,
        string Source,
        string Provenance
    );

    private sealed class Inputs(string text)
    {
        private readonly Dictionary<string, string> values = text.Split(
                ';',
                StringSplitOptions.RemoveEmptyEntries
            )
            .Select(pair => pair.Split('='))
            .ToDictionary(pair => pair[0], pair => pair[1]);

        public double this[string name] => double.Parse(values[name], CultureInfo.InvariantCulture);

        public double MarathonIntensity =>
            RunningIntensity.Relative(42.195 / (this["t_s"] / 3600), this["vo2max"]);

        public Sex Sex => values["sex"] == "M" ? Sex.Male : Sex.Female;
    }
}
