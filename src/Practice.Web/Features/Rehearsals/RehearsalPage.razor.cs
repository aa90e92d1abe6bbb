using Microsoft.AspNetCore.Components;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Rehearsals;
using Practice.Service.Hosting;
using Practice.Service.News;
using Practice.Service.Rehearsals;

namespace Practice.Web.Features.Rehearsals;

public sealed partial class RehearsalPage
{
    private RehearsalFile? file;
    private TrialVerdict? verdict;
    private bool isMissing;
    private bool isTelling;
    private string notice = "";

    [Inject]
    private RehearsalDeskWork Work { get; set; } = null!;

    [Inject]
    private LiveNews News { get; set; } = null!;

    [Inject]
    private PracticeSettings Settings { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    /// <summary>Key of the rehearsal.</summary>
    [Parameter]
    public Guid Id { get; set; }

    protected override void OnInitialized() => _ = Follow();

    protected override async Task OnParametersSetAsync()
    {
        if (file?.Rehearsal.Value.Id != Id)
            await Fetch();
    }

    private async Task Fetch()
    {
        file = await Work.Open.Run(Desk, Id, verdict, Leaving);
        isMissing = file is null;
    }

    /// <summary>What the client sends from the phone, or a colleague decides, shows without a reload.</summary>
    private async Task Follow()
    {
        try
        {
            await foreach (var news in News.Of(Desk, Leaving))
                if (news.Any(n => n.Changes && n.Concerns(Id)))
                    await InvokeAsync(async () =>
                    {
                        await Fetch();
                        StateHasChanged();
                    });
        }
        catch (OperationCanceledException)
        {
            // the page was left
        }
    }

    private Task Judge(TrialVerdict hers)
    {
        verdict = hers;
        return Fetch();
    }

    private Task Tell(Feedback feedback) =>
        Send(async () =>
        {
            try
            {
                var told = await Work.Record.Run(Desk, file!.Rehearsal, feedback, Leaving);
                notice =
                    told is Saved<Rehearsal>
                        ? ""
                        : "The client sent feedback at the same moment. Look at it before you type over it.";
                isTelling = false;
            }
            catch (ArgumentException)
            {
                notice = "A number is out of its range: nothing was kept.";
            }
            await Fetch();
            return true;
        });

    private Task<PlanDiff?> Preview(RehearsalJudgement judgement) =>
        Work.Decide.Preview(Desk, Id, judgement, Leaving);

    private async Task Decide(RehearsalJudgement judgement)
    {
        notice = await Work.Decide.Run(Desk, file!.Rehearsal, judgement, Leaving) switch
        {
            DecisionNotAllowed => "Only a practitioner decides on a rehearsal.",
            DecidedElsewhere =>
                "Something new came in meanwhile. Read it, then decide: nothing was kept.",
            _ => "",
        };
        await Fetch();
    }

    private async Task Change(RehearsalDetails details)
    {
        notice = RehearsalWords.Refusal(
            await Work.Move.Run(Desk, file!.Rehearsal, details, Leaving),
            details.RunOn
        );
        await Fetch();
    }

    private async Task Cancel(string because)
    {
        if (await Work.Cancel.Run(Desk, Id, because, Leaving))
            Navigation.NavigateTo($"/races/{file!.Race.Id}#rehearsals");
        else
            await Fetch();
    }

    private void ToScreening() => Navigation.NavigateTo($"/clients/{file!.Client.Id}/screening");
}
