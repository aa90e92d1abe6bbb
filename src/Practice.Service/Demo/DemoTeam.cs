using Practice.Domain.Practices;
using Practice.Store.Accounts;

namespace Practice.Service.Demo;

/// <summary>The invented colleagues of the demo practitioner. They have no password, so nobody signs in as one of them.</summary>
internal static class DemoTeam
{
    public static IEnumerable<Account> Colleagues(Guid practiceId) =>
        [
            Member(practiceId, "Sam Thornbury", "sam@practice.example", StaffRole.Practitioner),
            Member(practiceId, "Jo Withers", "jo@practice.example", StaffRole.Assistant),
        ];

    private static Account Member(Guid practiceId, string name, string email, StaffRole role) =>
        new()
        {
            Id = Guid.CreateVersion7(),
            PracticeId = practiceId,
            UserName = email,
            Email = email,
            EmailConfirmed = true,
            DisplayName = name,
            Role = role,
        };
}
