using Practice.Domain.Practices;

namespace Practice.Web.Features.Settings;

/// <summary>What each role may do, in a sentence.</summary>
internal static class RoleWords
{
    public static string May(StaffRole role) =>
        role switch
        {
            StaffRole.Assistant => "Enters, books and prints; never issues a plan or lifts a hold.",
            StaffRole.Practitioner => "Also issues and withdraws plans and records clearances.",
            StaffRole.Owner => "Also runs the practice: team, e-mail, audit.",
            _ => throw new ArgumentOutOfRangeException(nameof(role), role, null),
        };
}
