using System.Text;
using Practice.Domain.Foods.Own;
using Practice.Domain.Practices;
using Practice.Domain.Tables;
using Practice.Service.Clients;
using Practice.Service.Desks;
using Practice.Service.Foods;
using Practice.Service.Tables;
using Practice.TestSupport;

namespace Practice.Store.Tests.Attacks;

/// <summary>Tables of whatever people and programs put into cells: each is read or refused with words, none breaks anything.</summary>
public sealed class BadTablesTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private const int Tables = 300;

    private static readonly string[] Cells =
    [
        "",
        "0",
        "-1",
        "12,5",
        "1,234",
        "79228162514264337593543950335",
        "79228162514264337593543950336",
        "1e308",
        "NaN",
        "=cmd|' /C calc'!A0",
        "'=1+1",
        "none",
        "wheat; milk",
        "gluten",
        "rice",
        "sweet bite",
        "drink",
        "g",
        "ml",
        "slice",
        "1990-05-04",
        "4/5/1990",
        "31.2.2000",
        "0000-00-00",
        "female",
        "🍚",
        "\u202Eright to left",
        "\u0007bell",
        "a=1;b=;=3;c=79228162514264337593543950335",
        "'; drop table client; --",
        new('x', 9_000),
    ];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Desk Owner => practice.Practitioner with { Role = StaffRole.Owner };

    [Fact]
    public async Task Tables_of_anything_are_read_or_refused_with_words()
    {
        var random = new Random(20270402);
        for (var i = 0; i < Tables; i++)
        {
            var foods = i % 2 == 0;
            var columns = foods ? FoodColumns.All : ClientColumns.All;
            var table = await Table([.. columns.Select(c => c.Name)], random);
            var match = ColumnMatch.Guess(table.Columns, columns);
            var faults = foods
                ? (await practice.Get<ImportFoods>().Preview(Owner, table, match, Cancel)).Faults
                : (await practice.Get<ImportClients>().Preview(Owner, table, match, Cancel)).Faults;
            Assert.Contains(faults, f => !f.IsWarning);
            Assert.All(faults, f => Assert.InRange(f.Text.Length, 10, 600));
            Assert.IsType<NothingTaken>(
                foods
                    ? await practice.Get<ImportFoods>().Run(Owner, table, match, Cancel)
                    : await practice.Get<ImportClients>().Run(Owner, table, match, Cancel)
            );
        }
    }

    private async Task<ImportTable> Table(string[] head, Random random)
    {
        var text = new StringBuilder();
        text.AppendJoin(',', head.Select(Quoted)).Append('\n');
        for (var row = 0; row < 10; row++)
            text.AppendJoin(',', random.GetItems(Cells, head.Length).Select(Quoted)).Append('\n');
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(text.ToString()));
        return Assert.IsType<TableRead>(await practice.Get<ReadTable>().Run(file, Cancel)).Table;
    }

    private static string Quoted(string cell) => $"\"{cell}\"";
}
