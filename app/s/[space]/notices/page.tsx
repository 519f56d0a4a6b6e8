import type { Metadata } from "next";
import Link from "next/link";
import { noticeInWords, noticePath, type Notice } from "@/lib/model/notice";
import { listNotices } from "@/lib/server/notices/reads";
import { requireMember } from "@/lib/server/session";
import { Day } from "@/lib/ui/day";
import { EmptyState } from "@/lib/ui/empty-state";
import { markReadAction } from "./actions";
import { ReadForm } from "./read-form";

export const metadata: Metadata = { title: "Notices" };

interface NoticesPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function NoticesPage({ params }: NoticesPageProps) {
  const member = await requireMember((await params).space);
  const notices = await listNotices(member);
  const unread = notices.filter(({ readAt }) => readAt === null);
  const action = markReadAction.bind(null, member.spaceSlug);
  return (
    <div className="max-w-3xl">
      <h1 className="mb-4">Notices</h1>
      {notices.length === 0 ? (
        <EmptyState>
          What you should know stands here, such as another plan of a shared brew, or dry hops that are due.
        </EmptyState>
      ) : null}
      {unread.length < 2 ? null : (
        <ReadForm ids={unread.map(({ id }) => id)} action={action}>
          Mark all {unread.length} as read
        </ReadForm>
      )}
      <ul className="list-ruled mt-4">
        {notices.map((notice) => (
          <li key={notice.id} className="flex flex-wrap items-center justify-between gap-x-6 gap-y-2 py-3">
            <NoticeText notice={notice} home={`/s/${member.spaceSlug}`} />
            {notice.readAt === null ? (
              <ReadForm ids={[notice.id]} action={action}>
                Mark as read<span className="sr-only">: {noticeInWords(notice)}</span>
              </ReadForm>
            ) : null}
          </li>
        ))}
      </ul>
    </div>
  );
}

function NoticeText({ notice, home }: { readonly notice: Notice; readonly home: string }) {
  const { payload, readAt, createdAt } = notice;
  return (
    <div>
      <Link href={home + noticePath(notice)} className={readAt === null ? "target font-semibold" : "target"}>
        {noticeInWords(notice)}
      </Link>
      {payload.note === "" ? null : <p>“{payload.note}”</p>}
      <p className="text-muted">
        <Day at={createdAt} />
        {readAt === null ? "; not read yet" : ""}
      </p>
    </div>
  );
}
