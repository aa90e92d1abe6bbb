namespace Practice.Service.Desks;

/// <summary>What a person may do in a practice.</summary>
public enum Role
{
    /// <summary>Everything, and the practice itself.</summary>
    Owner,

    /// <summary>Cares for clients: builds, issues, clears holds.</summary>
    Practitioner,

    /// <summary>Enters data and prints; never issues a plan or lifts a hold.</summary>
    Assistant,
}

/// <summary>Who acts, and for which practice. Every task asks it before it does anything.</summary>
public sealed record Desk(Guid PracticeId, Guid AccountId, string Name, Role Role)
{
    /// <summary>Issuing, withdrawing and lifting holds is a practitioner's decision.</summary>
    public bool MayDecide => Role is Role.Owner or Role.Practitioner;
}
