using System.Text;
using Practice.Domain.Foods;
using Practice.Domain.Foods.Own;
using Practice.Domain.Practices;
using Practice.Domain.Tables;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Service.Tables;
using Practice.Store.Audit;
using Practice.TestSupport;

namespace Practice.Store.Tests.Tables;

/// <summary>Tables of foods and of clients are taken in whole or not at all.</summary>
public sealed class ImportTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private const string FoodHead =
        "Name;Energy, kcal;Carbohydrate, g;Sugars, g;Fibre, g;Protein, g;Fat, g;Salt, g;Caffeine;Allergens;Diets;Served as;Unit;Unit weighs, g;Smallest helping;Largest helping;Source";

    private const string ClientHead =
        "First name,Last name,Date of birth,Gender,Height,Weight,Allergies,Other allergy";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_table_of_foods_is_taken_in_and_served()
    {
        var desk = await practice.FoundPractice("Foods, whole");
        var table = await Table(
            FoodHead,
            "Oven square;352;72;40;4;5;4;0,3;0;wheat;sugary;sweet bite;square;45;1;3;Label",
            "House rice;130;28;0;0,4;2,7;0,3;0;0;none;;rice;g;;100;350;Label"
        );

        Assert.Equal(new Taken(2), await Foods(desk, table));

        var foods = await practice.Get<Larder>().Run(desk, Cancel);
        var rice = Assert.Single(foods.Search("House rice"));
        Assert.Equal((2.7m, FoodGroup.Starch), (rice.Per100G.ProteinG, rice.Group));
        Assert.Equal(120, Assert.Single(foods.Search("Oven square")).Per100G.SodiumMg);
    }

    [Fact]
    public async Task One_wrong_row_keeps_the_whole_table_out_and_says_where()
    {
        var desk = await practice.FoundPractice("Foods, broken");
        var table = await Table(
            FoodHead,
            "Fig bar;352;72;40;4;5;4;0.3;0;wheat;;sweet bite;bar;45;1;3;Label",
            "Mute bar;352;72;40;4;5;4;0.3;0;;;sweet bite;bar;45;1;3;Label"
        );

        Assert.IsType<NothingTaken>(await Foods(desk, table));

        Assert.Same(FoodLibrary.Standard, await practice.Get<Larder>().Run(desk, Cancel));
        var reading = await practice
            .Get<ImportFoods>()
            .Preview(desk, table, Match(table, FoodColumns.All), Cancel);
        var fault = Assert.Single(reading.Faults);
        Assert.Equal((3, "Allergens", false), (fault.Row, fault.Column, fault.IsWarning));
    }

    [Fact]
    public async Task What_is_on_file_or_twice_in_the_table_is_left_out_and_told()
    {
        var desk = await practice.FoundPractice("Foods, again");
        var bar = "Fig bar;352;72;40;4;5;4;0.3;0;wheat;;sweet bite;bar;45;1;3;Label";
        await Foods(desk, await Table(FoodHead, bar));
        var again = await Table(
            FoodHead,
            bar.ToUpperInvariant(),
            bar.Replace("Fig", "Date", StringComparison.Ordinal),
            bar.Replace("Fig", "Date", StringComparison.Ordinal)
        );

        var reading = await practice
            .Get<ImportFoods>()
            .Preview(desk, again, Match(again, FoodColumns.All), Cancel);
        Assert.Equal(
            ["On file already: left out.", "The same as in row 3: left out."],
            reading.Faults.Select(f => f.Text)
        );
        Assert.Equal(new Taken(1), await Foods(desk, again));
        Assert.IsType<NothingTaken>(await Foods(desk, again));
    }

    [Fact]
    public async Task No_more_foods_than_a_practice_may_have_in_use()
    {
        var desk = await practice.FoundPractice("Foods, many");
        var rows = Enumerable
            .Range(0, OwnFoods.MostInUse + 1)
            .Select(i => $"Fig bar {i};352;72;40;4;5;4;0.3;0;wheat;;sweet bite;bar;45;1;3;Label");
        var outcome = await Foods(desk, await Table(FoodHead, [.. rows]));
        Assert.Contains(
            "at most 300",
            Assert.IsType<NothingTaken>(outcome).Reason,
            StringComparison.Ordinal
        );
        Assert.Same(FoodLibrary.Standard, await practice.Get<Larder>().Run(desk, Cancel));
    }

    [Fact]
    public async Task Clients_are_taken_into_care_unscreened_in_the_caseload_of_who_did_it()
    {
        var desk = await practice.FoundPractice("Clients, whole");
        var table = await Table(
            ClientHead,
            "Mara,Example,1990-05-04,f,170,\"61,5\",\"wheat, tree nuts\",",
            "Jon,Example,25.12.1985,male,182,78,,kiwi"
        );

        Assert.Equal(new Taken(2), await Clients(desk, table));

        var rows = await practice.Get<FindClients>().Mine(desk, "", Cancel);
        Assert.Equal(["Jon Example", "Mara Example"], rows.Select(r => r.Name));
        var mara = (await practice.Get<OpenClient>().Run(desk, rows[1].ClientId, Cancel))!;
        Assert.Equal([Allergen.Wheat, Allergen.TreeNuts], mara.Client.Value.Diet.Allergies);
        Assert.Equal(61.5m, mara.Client.Value.LatestMass!.Mass.Kilograms);
        Assert.NotEmpty(mara.StandingHolds);
        var line = Assert.Single(
            await practice.Get<AuditLog>().Latest(desk.PracticeId, rows[1].ClientId, 5, Cancel),
            l => l.What == "client-registered"
        );
        Assert.Equal("from a table", line.Detail);
    }

    [Theory]
    [InlineData("Mara,Example,4/5/1990,f,170,62,,", "Date of birth", "which is the month")]
    [InlineData("Mara,Example,2090-01-01,f,170,62,,", "Date of birth", "lies ahead")]
    [InlineData("Mara,Example,1990-05-04,,170,62,,", "Gender", "the formulas differ")]
    [InlineData("Mara,Example,1990-05-04,x,170,62,,", "Gender", "“x” is not a word")]
    [InlineData("Mara,Example,1990-05-04,f,1.70,62,,", "Height", "100 to 230 cm")]
    [InlineData("Mara,Example,1990-05-04,f,170,620,,", "Weight", "Between 25 and 300 kg")]
    [InlineData("Mara,Example,1990-05-04,f,170,,,", "Weight", "every target")]
    [InlineData("Mara,,1990-05-04,f,170,62,,", "Last name", "this is needed")]
    [InlineData("Mara,Example,1990-05-04,f,170,62,kiwi,", "Allergies", "“kiwi” is not a word")]
    public async Task What_is_wrong_with_a_client_is_told_in_its_column_and_nobody_is_taken_in(
        string row,
        string column,
        string words
    )
    {
        var desk = await practice.FoundPractice("Clients, broken");
        var table = await Table(ClientHead, "Jon,Example,1985-12-25,m,182,78,,", row);
        var reading = await practice
            .Get<ImportClients>()
            .Preview(desk, table, Match(table, ClientColumns.All), Cancel);

        var fault = Assert.Single(reading.Faults);
        Assert.Equal((3, column), (fault.Row, fault.Column));
        Assert.Contains(words, fault.Text, StringComparison.Ordinal);
        Assert.IsType<NothingTaken>(await Clients(desk, table));
        Assert.Empty(await practice.Get<FindClients>().Run(desk, "", Cancel));
    }

    [Fact]
    public async Task A_client_is_known_again_by_name_and_day_of_birth()
    {
        var desk = await practice.FoundPractice("Clients, again");
        await Clients(desk, await Table(ClientHead, "Mara,Example,1990-05-04,f,170,62,,"));
        var again = await Table(
            ClientHead,
            "mara,EXAMPLE,4.5.1990,f,170,62,,",
            "Mara,Example,1991-05-04,f,170,62,,"
        );
        Assert.Equal(new Taken(1), await Clients(desk, again));
        Assert.Equal(2, (await practice.Get<FindClients>().Run(desk, "", Cancel)).Length);
    }

    [Fact]
    public async Task An_assistant_takes_clients_in_for_nobodys_caseload_and_no_foods()
    {
        var assistant = (await practice.FoundPractice("By an assistant")) with
        {
            Role = StaffRole.Assistant,
        };
        var clients = await Table(ClientHead, "Mara,Example,1990-05-04,f,170,62,,");
        Assert.Equal(new Taken(1), await Clients(assistant, clients));
        Assert.Empty(await practice.Get<FindClients>().Mine(assistant, "", Cancel));

        var foods = await Table(
            FoodHead,
            "Fig bar;352;72;40;4;5;4;0.3;0;wheat;;sweet bite;bar;45;1;3;Label"
        );
        await Assert.ThrowsAsync<NotAllowedException>(() => Foods(assistant, foods));
    }

    [Fact]
    public async Task A_template_reads_back_and_no_cell_of_it_is_a_formula()
    {
        using var file = new MemoryStream(ImportTemplates.Of(ClientColumns.All));
        var read = await practice.Get<ReadTable>().Run(file, Cancel);
        var table = Assert.IsType<TableRead>(read).Table;
        var desk = await practice.FoundPractice("From the template");
        Assert.Equal(new Taken(1), await Clients(desk, table));
        Assert.StartsWith(
            "\"'=",
            Encoding.UTF8.GetString(
                ImportTemplates.Of([new ImportColumn("x", "=1+1", false, "", "@x")])
            )[1..],
            StringComparison.Ordinal
        );
    }

    private static ColumnMatch Match(
        ImportTable table,
        IReadOnlyCollection<ImportColumn> columns
    ) => ColumnMatch.Guess(table.Columns, columns);

    private Task<TakeOutcome> Foods(Desk desk, ImportTable table) =>
        practice.Get<ImportFoods>().Run(desk, table, Match(table, FoodColumns.All), Cancel);

    private Task<TakeOutcome> Clients(Desk desk, ImportTable table) =>
        practice.Get<ImportClients>().Run(desk, table, Match(table, ClientColumns.All), Cancel);

    private async Task<ImportTable> Table(string head, params string[] rows)
    {
        using var file = new MemoryStream(
            Encoding.UTF8.GetBytes(string.Join('\n', rows.Prepend(head)))
        );
        return Assert.IsType<TableRead>(await practice.Get<ReadTable>().Run(file, Cancel)).Table;
    }
}
