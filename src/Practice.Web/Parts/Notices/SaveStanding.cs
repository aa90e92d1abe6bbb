namespace Practice.Web.Parts.Notices;

/// <summary>Whether what is on the screen is on file.</summary>
public enum SaveStanding
{
    /// <summary>On file.</summary>
    Saved,

    /// <summary>On its way.</summary>
    Saving,

    /// <summary>Only on the screen: the store could not be reached.</summary>
    NotSaved,
}
