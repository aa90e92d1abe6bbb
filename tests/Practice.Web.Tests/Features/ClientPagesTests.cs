using Bunit;
using Bunit.TestDoubles;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using Practice.Domain.Clients;
using Practice.Domain.Foods;
using Practice.Domain.Practices;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.Service.Clients;
using Practice.TestSupport;
using Practice.Web.Features.Clients;
using Practice.Web.Features.Clients.Details;
using Practice.Web.Shell;

namespace Practice.Web.Tests.Features;

[Collection(DeskCollection.Name)]
public class ClientPagesTests(TestPractice practice)
    : DeskContext(practice),
        IClassFixture<TestPractice>
{
    private NavigationManager Navigation => Services.GetRequiredService<NavigationManager>();

    [Fact]
    public async Task Searching_stands_in_the_address_and_finds_as_she_types()
    {
        await Practice.NewClient();
        var page = Open<ClientsPage>();
        page.WaitForElement("li strong");

        await page.Find("input[type=search]").InputAsync("nobody of that name");
        Assert.EndsWith("?q=nobody%20of%20that%20name", Navigation.Uri, StringComparison.Ordinal);
        page.Render();
        page.WaitForAssertion(() =>
            Assert.Contains("Nobody matches", page.Markup, StringComparison.Ordinal)
        );

        await page.Find("input[type=search]").InputAsync("exam");
        page.Render();
        page.WaitForAssertion(() =>
            Assert.Equal("Ines Example", page.Find("li strong").TextContent)
        );
    }

    [Fact]
    public async Task A_form_that_cannot_be_read_says_so_beside_the_field_and_keeps_what_was_typed()
    {
        var page = Open<NewClientPage>();
        page.WaitForElement("form");
        await page.Find("#given").ChangeAsync("Ada");
        await page.Find("#height").ChangeAsync("17");
        await page.Find("#result-time").ChangeAsync("half past one");
        await page.Find("form").SubmitAsync();

        Assert.Equal("Ada", page.Find("#given").GetAttribute("value"));
        Assert.Equal("Europe/London", page.Find("#zone").GetAttribute("value"));
        Assert.Equal("17", page.Find("#height").GetAttribute("value"));
        string Beside(string id) => page.Find($".field:has(#{id}) .validation-message").TextContent;
        Assert.Equal("This is needed.", Beside("family"));
        Assert.Equal("Between 100 and 230 cm.", Beside("height"));
        Assert.Contains("1:41:00", Beside("result-time"), StringComparison.Ordinal);
        Assert.Contains("invalid", page.Find("#height").ClassList);
    }

    [Fact]
    public async Task A_new_client_is_on_file_with_allergies_and_goes_on_to_screening()
    {
        var page = Open<NewClientPage>();
        page.WaitForElement("form");
        await page.Find("#given").ChangeAsync("Zoë");
        await page.Find("#family").ChangeAsync("Quint");
        await page.Find("#born").ChangeAsync("1991-02-03");
        await page.Find("#sex").ChangeAsync("Female");
        await page.Find("#height").ChangeAsync("168");
        await page.Find("#mass").ChangeAsync("61.5");
        await page.FindAll(".tick")
            .Single(t => t.TextContent.Trim() == "Peanuts")
            .QuerySelector("input")!
            .ChangeAsync(true);
        await page.Find("form").SubmitAsync();

        page.WaitForAssertion(() =>
            Assert.EndsWith("/screening", Navigation.Uri, StringComparison.Ordinal)
        );
        var row = Assert.Single(
            await Practice.Get<FindClients>().Run(Practice.Practitioner, "Quint", Cancel)
        );
        var file = await Practice
            .Get<OpenClient>()
            .Run(Practice.Practitioner, row.ClientId, Cancel);
        var client = file!.Client.Value;
        Assert.Equal([Allergen.Peanuts], client.Diet.Allergies);
        Assert.Equal(61.5m, client.LatestMass!.Mass.Kilograms);
        Assert.Equal(Sex.Female, client.Physique.Sex);
    }

    [Fact]
    public async Task A_form_sent_twice_in_haste_takes_one_client_in()
    {
        var page = Open<NewClientPage>();
        page.WaitForElement("form");
        await page.Find("#given").ChangeAsync("Ivo");
        await page.Find("#family").ChangeAsync("Hasty");
        await page.Find("#born").ChangeAsync("1984-07-30");
        await page.Find("#sex").ChangeAsync("Male");
        await page.Find("#height").ChangeAsync("181");
        await page.Find("#mass").ChangeAsync("74");
        var form = page.Find("form");
        Task[] both;
        await using (var slow = await Practice.HoldUpNewClients())
        {
            both = [form.SubmitAsync(), form.SubmitAsync()];
            await slow.SomebodyWaits();
        }
        await Task.WhenAll(both);

        page.WaitForAssertion(() =>
            Assert.EndsWith("/screening", Navigation.Uri, StringComparison.Ordinal)
        );
        Assert.Single(
            await Practice.Get<FindClients>().Run(Practice.Practitioner, "Hasty", Cancel)
        );
    }

    [Fact]
    public async Task What_was_typed_stays_while_the_database_is_away_and_is_saved_once_it_is_back()
    {
        var id = await Practice.NewClient();
        var page = Open<DetailsPage>(p => p.Add(d => d.Id, id));
        await page.WaitForElement("#notes").ChangeAsync("Eats early.");
        await using (await Practice.TakeDatabaseAway())
            await page.Find("form").SubmitAsync();

        var told = Services.GetRequiredService<ISnackbar>().ShownSnackbars;
        Assert.StartsWith("The database cannot be reached", Assert.Single(told).Message);
        Assert.Equal("Eats early.", page.Find("#notes").GetAttribute("value"));

        await page.Find("form").SubmitAsync();
        var file = await Practice.Get<OpenClient>().Run(Practice.Practitioner, id, Cancel);
        Assert.Equal("Eats early.", file!.Client.Value.Notes);
    }

    [Fact]
    public async Task What_somebody_else_saved_meanwhile_is_shown_and_not_overwritten()
    {
        var id = await Practice.NewClient();
        var page = Open<DetailsPage>(p => p.Add(d => d.Id, id));
        await page.WaitForElement("#height").ChangeAsync("171");

        var file = await Practice.Get<OpenClient>().Run(Practice.Practitioner, id, Cancel);
        await Practice
            .Get<ReviseClient>()
            .Run(
                Practice.Practitioner,
                file!.Client,
                ClientDetails.Of(file.Client.Value) with
                {
                    Notes = "Rang on Monday",
                },
                Cancel
            );
        await page.Find("form").SubmitAsync();

        page.WaitForElement("[role=alert] table");
        var rows = page.FindAll("tbody th").Select(t => t.TextContent);
        Assert.Equal(["Height", "Notes"], rows);
        Assert.Contains("Rang on Monday", page.Find("tbody").TextContent, StringComparison.Ordinal);

        await page.FindAll("button")
            .Single(b => b.TextContent == "Take what is on file")
            .ClickAsync();
        Assert.Equal("Rang on Monday", page.Find("#notes").GetAttribute("value"));
        Assert.Equal("170", page.Find("#height").GetAttribute("value"));
    }

    [Fact]
    public void A_client_who_is_not_there_is_said_not_to_be()
    {
        var page = Open<ClientPage>(p => p.Add(c => c.Id, Guid.CreateVersion7()));
        page.WaitForAssertion(() =>
            Assert.Contains("no such page", page.Markup, StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task Another_practices_client_is_not_there_either()
    {
        var id = await Practice.NewClient();
        var others = await Practice.FoundPractice("Another practice");
        var page = Open<ClientPage>(p => p.Add(c => c.Id, id), others);
        page.WaitForAssertion(() => Assert.Single(page.FindComponents<NotFoundPage>()));
    }

    [Fact]
    public async Task A_weighing_joins_the_log_and_the_plot()
    {
        var id = await Practice.NewClient();
        var page = Open<ClientPage>(p => p.Add(c => c.Id, id));
        await page.WaitForElement("#weigh-kg").ChangeAsync("69.2");
        await page.Find("form").SubmitAsync();
        page.WaitForAssertion(() =>
            Assert.Contains(
                "69.2 kg on 1 Apr 2027, down 0.8 kg",
                page.Markup,
                StringComparison.Ordinal
            )
        );
    }

    [Fact]
    public async Task A_sweat_test_gives_a_rate_and_can_be_taken_off_again()
    {
        var id = await Practice.NewClient();
        var page = Open<ClientPage>(p => p.Add(c => c.Id, id));
        await page.WaitForElement("#sweat-before").ChangeAsync("70.0");
        await page.Find("#sweat-after").ChangeAsync("68.9");
        await page.Find("#sweat-drunk").ChangeAsync("0.5");
        await page.Find("#sweat-urine").ChangeAsync("0.1");
        await page.Find("form:has(#sweat-before)").SubmitAsync();

        page.WaitForAssertion(() =>
            Assert.Contains(
                "1.50 L/h",
                page.Find(".sweat-log").TextContent,
                StringComparison.Ordinal
            )
        );
        await page.Find(".sweat-log button").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".sweat-log")));
    }

    [Fact]
    public async Task A_hold_lifted_before_its_saving_is_done_is_lifted()
    {
        var id = await Practice.NewClient();
        var page = Open<ClientPage>(
            p => p.Add(c => c.Id, id),
            Practice.Practitioner with
            {
                Role = StaffRole.Owner,
            }
        );
        page.WaitForElement("#weigh-kg");
        await Button(page, "Must be kept…").ClickAsync(new());
        await page.Find("#keep-why").ChangeAsync("A claim is open.");
        Task keeping;
        Task releasing;
        await using (var slow = await Practice.HoldUpClients())
        {
            keeping = Button(page, "Keep the record").ClickAsync(new());
            await slow.SomebodyWaits();
            page.WaitForAssertion(() => Button(page, "It may be erased again"));
            releasing = Button(page, "It may be erased again").ClickAsync(new());
        }
        await Task.WhenAll(keeping, releasing);

        page.WaitForAssertion(() => Button(page, "Erase…"));
        var file = await Practice.Get<OpenClient>().Run(Practice.Practitioner, id, Cancel);
        Assert.Null(file!.Client.Value.LegalHold);
    }

    private static AngleSharp.Dom.IElement Button(
        IRenderedComponent<ClientPage> page,
        string words
    ) => page.FindAll("button").Single(b => b.TextContent == words);

    [Fact]
    public async Task A_client_who_must_not_be_weighed_is_offered_no_sweat_test()
    {
        var answers = Questionnaire.NothingToReport.With(
            EatingAndEnergy.EatingDisorder,
            EatingAndEnergy.InThePast
        );
        var id = await Practice.NewClient(answers);
        var page = Open<ClientPage>(p => p.Add(c => c.Id, id));
        page.WaitForAssertion(() =>
            Assert.Contains("go by thirst", page.Markup, StringComparison.Ordinal)
        );
        Assert.Empty(page.FindAll("#sweat-before"));
    }
}
