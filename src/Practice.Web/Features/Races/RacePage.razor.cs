using Microsoft.AspNetCore.Components;
using NodaTime;
using Practice.Domain.Caseload;
using Practice.Domain.Plans;
using Practice.Domain.Races;
using Practice.Domain.Targets;
using Practice.Service.Plans;
using Practice.Service.Races;
using Practice.Web.Parts.Plots;

namespace Practice.Web.Features.Races;

public sealed partial class RacePage
{
    private RaceFile? file;
    private bool isMissing;
    private MenuStyle style;
    private LocalDateTime now;
    private IReadOnlyList<RaceLineStation> stations = [];
    private CancellationTokenSource? building;
    private string? refusal;

    /// <summary>Key of the race.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The version she would go on with: the newest that was not withdrawn.</summary>
    private PlanVersionRow? Open =>
        file!.Versions.FirstOrDefault(v => v.Status != PlanStatus.Withdrawn);

    protected override Task OnParametersSetAsync() => Fetch(null);

    private Task Choose(LoadingChoices choices) => Fetch(choices);

    private async Task Fetch(LoadingChoices? choices)
    {
        refusal = null;
        file = await OpenRace.Run(Desk, Id, choices, Leaving);
        isMissing = file is null;
        if (file is null)
            return;
        var race = file.Race.Value;
        now = Calendar.Now.InZone(DateTimeZoneProviders.Tzdb[race.ZoneId]).LocalDateTime;
        var calendar = new RaceCalendar(race.Start);
        stations = RaceLineStation.Of(
            now,
            calendar,
            calendar.LoadingFrom(file.Targets.WindowHours),
            Duration.FromMinutes((double)(file.Targets.ExpectedFinish.Aim ?? 0))
        );
    }

    private Task Override((Target Target, decimal Value, string Reason) own) =>
        Choose(
            file!.Choices with
            {
                Overrides = file.Choices.Overrides.With(
                    TargetOverrides.For(own.Target, own.Value, Desk.Name, Calendar.Now, own.Reason)
                ),
            }
        );

    private Task Restore(Target target) =>
        Choose(file!.Choices with { Overrides = file.Choices.Overrides.Without(target.Key) });

    private async Task Build()
    {
        if (building is not null)
            return;
        building = CancellationTokenSource.CreateLinkedTokenSource(Leaving);
        refusal = null;
        var outcome = await DraftPlan.Run(Desk, Id, file!.Choices, style, building.Token);
        building.Dispose();
        building = null;
        if (Leaving.IsCancellationRequested)
            return;
        switch (outcome)
        {
            case Drafted drafted:
                Navigation.NavigateTo($"/plans/{drafted.VersionId}?improve=now");
                break;
            case DraftHeld held:
                refusal = $"Not even a draft may be built: {held.Hold.Title}. {held.Hold.Reason}";
                break;
            case DraftedElsewhere:
                await Fetch(file!.Choices);
                refusal =
                    "Somebody else changed the draft while this one was built. Theirs stands; build once more to replace it.";
                break;
            case NoSuchRace:
                isMissing = true;
                break;
        }
    }

    private void ToScreening() =>
        Navigation.NavigateTo($"/clients/{file!.Race.Value.ClientId}/screening");

    /// <summary>A place on the race line opens what is decided there.</summary>
    private void Go(RaceLinePlace place) =>
        Navigation.NavigateTo(
            place switch
            {
                RaceLinePlace.Loading when Open is { } version => $"/plans/{version.Id}",
                RaceLinePlace.Loading or RaceLinePlace.LowResidue => $"/races/{Id}#choices",
                RaceLinePlace.Rehearsal => $"/races/{Id}#rehearsals",
                RaceLinePlace.Today => $"/clients/{file!.Race.Value.ClientId}",
                _ => $"/races/{Id}/edit",
            }
        );
}
