"""Writes into a store past the program, with hashes that hold: docs/reference/store.md says how."""
import sqlite3,hashlib,sys
def fields(*f):
    return b''.join(str(len(x.encode())).encode()+b':'+x.encode() for x in f)
def H(*f): return hashlib.sha256(fields(*f)).digest()
class Away:
    def __init__(self,path):
        self.c=sqlite3.connect(path)
        for r in self.c.execute("select name from sqlite_master where type='trigger'").fetchall(): self.c.execute(f'drop trigger "{r[0]}"')
    def people(self,at,who,kind,body):
        seq,prev=self.c.execute('select seq,hash from people order by seq desc limit 1').fetchone()
        h=H('people',str(seq+1),at,who,kind,body,prev.hex())
        self.c.execute('insert into people(seq,at,who,kind,body,previous,hash) values(?,?,?,?,?,?,?)',(seq+1,at,who,kind,body,prev,h))
    def append(self,sid,at,who,kind,body):
        seq,prev=self.c.execute('select seq,hash from entry where session=? order by seq desc limit 1',(sid,)).fetchone()
        h=H(sid,str(seq+1),at,who,kind,body,prev.hex())
        self.c.execute('insert into entry(session,seq,at,who,kind,body,previous,hash) values(?,?,?,?,?,?,?,?)',(sid,seq+1,at,who,kind,body,prev,h)); return h
    def session(self,unit_key,harness,sid,station,who,started,file,added,program='ringout 0.1.0',entries=(),digest=''):
        n=self.c.execute('select count(*) from session where unit_key=? and harness=?',(unit_key,harness)).fetchone()[0]
        serial=self.c.execute('select serial from unit where unit_key=? and harness=?',(unit_key,harness)).fetchone()[0]
        title,drawing,rev=self.c.execute('select title,drawing,revision from harness where digest=?',(harness,)).fetchone()
        prevh=''
        if n:
            last=self.c.execute('select id from session where unit_key=? and harness=? and number=?',(unit_key,harness,n)).fetchone()[0]
            prevh=self.c.execute('select hash from entry where session=? order by seq desc limit 1',(last,)).fetchone()[0].hex()
        start=H(prevh,serial,title,drawing,rev,sid,unit_key,harness,str(n+1),station,who,started,file,digest,program,added)
        self.c.execute('insert into session(id,unit_key,harness,station,who,started,file,digest,program,added,number) values(?,?,?,?,?,?,?,?,?,?,?)',(sid,unit_key,harness,station,who,started,file,digest,program,added,n+1))
        prev=start
        for i,(at,w,k,b) in enumerate(entries,1):
            h=H(sid,str(i),at,w,k,b,prev.hex())
            self.c.execute('insert into entry(session,seq,at,who,kind,body,previous,hash) values(?,?,?,?,?,?,?,?)',(sid,i,at,w,k,b,prev,h)); prev=h
    def done(self): self.c.commit(); self.c.close()
