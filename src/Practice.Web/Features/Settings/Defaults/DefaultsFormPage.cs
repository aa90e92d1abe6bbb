using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Practice.Domain.Caseload;
using Practice.Domain.Practices;
using Practice.Service.Practices;
using Practice.Service.Practices.Brand;
using Practice.Web.Shell;

namespace Practice.Web.Features.Settings.Defaults;

/// <summary>What is typed about a part of the practice's defaults; the other parts stay as they are.</summary>
/// <typeparam name="TForm">The form itself.</typeparam>
public interface IDefaultsForm<TForm>
{
    /// <summary>The form as it is on file.</summary>
    static abstract TForm Open(PracticeDefaults defaults);

    /// <summary>The defaults with what was typed.</summary>
    PracticeDefaults ApplyTo(PracticeDefaults defaults);
}

/// <summary>A page that changes a part of the practice's defaults: opens, saves, and tells of a save by somebody else.</summary>
/// <typeparam name="TForm">What is typed on it.</typeparam>
public abstract class DefaultsFormPage<TForm> : DeskPage
    where TForm : IDefaultsForm<TForm>, new()
{
    [Inject]
    private SetBrand Practices { get; set; } = null!;

    [Inject]
    private SetDefaults SetDefaults { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    /// <summary>The practice as it was read; null before.</summary>
    protected OnFile<PracticeProfile>? OnFile { get; private set; }

    /// <summary>What is typed.</summary>
    protected TForm Form { get; private set; } = new();

    /// <summary>What of it was changed and is wrong.</summary>
    protected EditContext Context { get; private set; } = null!;

    /// <summary>Why it was not saved; null otherwise.</summary>
    protected string? Refusal { get; private set; }

    /// <inheritdoc />
    protected override async Task OnInitializedAsync()
    {
        Context = new EditContext(Form);
        if (Desk.MayRunPractice && await Practices.Open(Desk, Leaving) is { } practice)
            Show(practice);
    }

    /// <summary>Saves what was typed.</summary>
    protected Task Save() =>
        Send(async () =>
        {
            Refusal = null;
            try
            {
                var defaults = Form.ApplyTo(OnFile!.Value.Defaults);
                if (
                    await SetDefaults.Run(Desk, OnFile, defaults, Leaving)
                    is Conflict<PracticeProfile>(var theirs)
                )
                {
                    Refusal =
                        "Somebody else saved this meanwhile. Below is what is on file now; type your change anew.";
                    Show(theirs!);
                    return true;
                }
            }
            catch (ArgumentException e)
            {
                Refusal = e.Message;
                return true;
            }
            Context.MarkAsUnmodified();
            Navigation.NavigateTo("/practice");
            return false;
        });

    /// <summary>Something was set by a button: the form is changed and not saved yet.</summary>
    protected void Changed(string field) => Context.NotifyFieldChanged(Context.Field(field));

    private void Show(OnFile<PracticeProfile> practice)
    {
        (OnFile, Form) = (practice, TForm.Open(practice.Value.Defaults));
        Context = new EditContext(Form);
    }
}
